package org.tidewright.twin.mechanism.biota;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.withinPercentage;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.tidewright.twin.TestVessel;
import org.tidewright.twin.contract.Body;
import org.tidewright.twin.contract.Stock;
import org.tidewright.twin.law.biota.BodyComposition;
import org.tidewright.twin.run.Network;
import org.tidewright.twin.run.State;

/** Fish of a condition that does not change, which die exponentially. */
class StarvationTest {
    private static final double DAY = 86_400;
    private static final double LETHAL = 0.5;

    private final TestVessel tank = new TestVessel(1, 1);
    private final Body flesh = pool("flesh");
    private final Body gut = pool("gut");
    private final Body carrion = pool("carrion");

    private Body pool(String name) {
        return tank.builder().pool(name, Stock.ORGANIC_CARBON, Stock.ORGANIC_NITROGEN, Stock.ORGANIC_PHOSPHORUS);
    }

    /** A kilogram of bones with so much of its flesh: half its phosphorus stays with bone, half goes with flesh. */
    private State thin(double condition, double temperature) {
        tank.with(new Starvation(
                tank.water(), flesh, List.of(gut), carrion, tank.exactly("lethal condition", "1", LETHAL)));
        Network network = tank.builder().build();
        State state = tank.filled(network, temperature, 0.2)
                .set(flesh, Stock.ORGANIC_CARBON, condition * BodyComposition.CARBON)
                .set(flesh, Stock.ORGANIC_NITROGEN, condition * BodyComposition.NITROGEN)
                .set(flesh, Stock.ORGANIC_PHOSPHORUS, (1 + condition) / 2 * BodyComposition.PHOSPHORUS)
                .set(gut, Stock.ORGANIC_NITROGEN, 0.01);
        TestVessel.run(network, state).until(10 * DAY);
        return state;
    }

    /** At the lethal condition a tenth a day: e^-1 are left after ten days, to the 1e-9 of the run. */
    @Test
    void atTheLethalConditionATenthADayDies() {
        State state = thin(LETHAL, 25);
        double left = LETHAL * BodyComposition.NITROGEN * Math.exp(-1);
        assertThat(state.get(flesh, Stock.ORGANIC_NITROGEN)).isCloseTo(left, withinPercentage(1e-4));
        assertThat(state.get(gut, Stock.ORGANIC_NITROGEN)).isCloseTo(0.01 * Math.exp(-1), withinPercentage(1e-4));
    }

    @Test
    void allTheyWereMadeOfBecomesCarrion() {
        State state = thin(LETHAL, 25);
        assertThat(state.get(carrion, Stock.ORGANIC_CARBON))
                .isCloseTo(LETHAL * BodyComposition.CARBON * (1 - Math.exp(-1)), withinPercentage(1e-4));
        assertThat(state.get(carrion, Stock.ORGANIC_PHOSPHORUS))
                .isCloseTo(0.75 * BodyComposition.PHOSPHORUS * (1 - Math.exp(-1)), withinPercentage(1e-4));
        assertThat(state.get(carrion, Stock.ORGANIC_NITROGEN) + state.get(flesh, Stock.ORGANIC_NITROGEN))
                .isCloseTo(
                        LETHAL * BodyComposition.NITROGEN + 0.01 - state.get(gut, Stock.ORGANIC_NITROGEN),
                        withinPercentage(1e-6));
    }

    /** Trout that had lost 32.5 % of their mass in thirteen weeks lived on (Weatherley and Gill 1981, abstract). */
    @Test
    void fishThatLostAThirdLive() {
        State state = thin(0.675, 12);
        assertThat(state.get(flesh, Stock.ORGANIC_NITROGEN) / (0.675 * BodyComposition.NITROGEN))
                .isGreaterThan(0.97);
    }

    @Test
    void noneDiesOfHungerThatIsNotThin() {
        State state = thin(1, 25);
        assertThat(state.get(carrion, Stock.ORGANIC_NITROGEN)).isZero();
    }
}
