package org.tidewright.twin.mechanism.carbonate;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.withinPercentage;

import org.junit.jupiter.api.Test;
import org.tidewright.seawater.carbonate.CarbonateSystem;
import org.tidewright.twin.TestVessel;
import org.tidewright.twin.contract.Setting;
import org.tidewright.twin.contract.Stock;
import org.tidewright.twin.law.carbonate.CalciumReactor;
import org.tidewright.twin.run.Network;
import org.tidewright.twin.run.Run;
import org.tidewright.twin.run.State;

/** A calcium reactor on a lake whose water it does not change, so that its effluent is steady. */
class ReactorTest {
    private static final double DAY = 86_400;

    /** 43.2 L a day over 5 kg: k m/(F + k m) of 4e-7 5/(5e-7 + 4e-7 5) is 0.8. */
    private static final double FLOW = 5e-7;

    private static final double PH = 6.5;
    private static final double ALKALINITY = 2.5;
    private static final double CARBON = 2.2;
    private static final double CALCIUM = 10.5;

    private final TestVessel lake = new TestVessel(1e5, 1);
    private final Setting effluent = lake.builder().setting("effluent", FLOW);
    private final CalciumReactor chamber = CalciumReactor.at(25, 35);

    private final Network network = lake.with(new Reactor(
                    "reactor",
                    lake.water(),
                    lake.world(),
                    chamber,
                    PH,
                    5,
                    effluent,
                    lake.exactly("rate", "m^3/(kg*s)", 4e-7),
                    lake.mains()))
            .builder()
            .build();
    private final State state = lake.filled(network, 25, 0.2)
            .dissolve(lake.water(), Stock.ALKALINITY, ALKALINITY)
            .dissolve(lake.water(), Stock.INORGANIC_CARBON, CARBON);
    private final State before = state.copy();
    private final Run run = TestVessel.run(network, state);

    private double gained(Stock stock) {
        return state.get(lake.water(), stock) - before.get(lake.water(), stock);
    }

    /** F x = 0.8 F x_sat, x_sat where the effluent would be saturated; the lake stays as it is to a millionth. */
    @Test
    void itGivesFourFifthsOfWhatWouldSaturateItsFlow() {
        run.until(10 * DAY);
        double saturated = chamber.saturatedAtPh(PH, ALKALINITY, CALCIUM, 0.01);
        double dissolved = 0.8 * FLOW * saturated * 10 * DAY;
        assertThat(gained(Stock.CALCIUM)).isCloseTo(0.99 * dissolved, withinPercentage(0.01));
        assertThat(gained(Stock.MAGNESIUM)).isCloseTo(0.01 * dissolved, withinPercentage(0.01));
        assertThat(gained(Stock.ALKALINITY)).isCloseTo(2 * dissolved, withinPercentage(0.01));
    }

    /** Effluent less feed is what the tank gains: the carbon of its alkalinity at its pH by the full system, within 1 %. */
    @Test
    void theCarbonOfItsEffluentIsThatOfItsAlkalinityAndPh() {
        run.until(DAY);
        double litres = FLOW * DAY;
        double alkalinity = ALKALINITY + gained(Stock.ALKALINITY) / litres;
        double carbon = CARBON + gained(Stock.INORGANIC_CARBON) / litres;
        double density = chamber.density();
        double full = CarbonateSystem.at(25, 35)
                .fromAlkalinityAndPh(alkalinity / density, PH)
                .inorganicCarbon();
        assertThat(carbon).isCloseTo(full * density, withinPercentage(1));
    }

    @Test
    void withoutFlowItGivesNothing() {
        run.set(effluent, 0);
        run.until(DAY);
        assertThat(gained(Stock.CALCIUM)).isZero();
        assertThat(gained(Stock.INORGANIC_CARBON)).isZero();
    }
}
