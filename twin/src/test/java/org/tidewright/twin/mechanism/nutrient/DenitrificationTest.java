package org.tidewright.twin.mechanism.nutrient;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.withinPercentage;

import org.junit.jupiter.api.Test;
import org.tidewright.twin.TestVessel;
import org.tidewright.twin.contract.Body;
import org.tidewright.twin.contract.Stock;
import org.tidewright.twin.run.Network;
import org.tidewright.twin.run.State;

/** Nitrate burnt away with waste of known make-up: 5 CH2O + 4 NO3- + 4 H+ = 5 CO2 + 2 N2 + 7 H2O. */
class DenitrificationTest {
    private static final double DAY = 86_400;
    private static final double FULL = 1e-6;

    private final TestVessel lake = new TestVessel(1e5, 1);
    private final Body ground =
            lake.builder().pool("ground", Stock.ORGANIC_CARBON, Stock.ORGANIC_NITROGEN, Stock.ORGANIC_PHOSPHORUS);

    /**
     * With plenty of carbon and well-aired water F N/(K + N) goes on evenly, N 0.95 and K 0.05 mol/m³; a run to 1e-9, asked
     * for to the thousandth that C/(C + 1 mmol) is short of one.
     */
    @Test
    void fiveCarbonGoWithFourNitrateAndTheirNitrogenAndPhosphorusComeFree() {
        lake.with(new Denitrification(
                lake.water(),
                ground,
                lake.world(),
                lake.exactly("full", "mol/s", FULL),
                lake.exactly("half", "mol/m^3", 0.05)));
        Network network = lake.builder().build();
        State state = lake.filled(network, 25, 0.2)
                .dissolve(lake.water(), Stock.NITRATE, 0.95)
                .set(ground, Stock.ORGANIC_CARBON, 100)
                .set(ground, Stock.ORGANIC_NITROGEN, 10)
                .set(ground, Stock.ORGANIC_PHOSPHORUS, 1);
        double alkalinity = state.get(lake.water(), Stock.ALKALINITY);
        double nitrate = state.get(lake.water(), Stock.NITRATE);
        TestVessel.run(network, state).until(10 * DAY);
        double reduced = FULL * 0.95 * 10 * DAY;
        assertThat(nitrate - state.get(lake.water(), Stock.NITRATE)).isCloseTo(reduced, withinPercentage(0.01));
        assertThat(100 - state.get(ground, Stock.ORGANIC_CARBON)).isCloseTo(1.25 * reduced, withinPercentage(0.01));
        // The waste keeps its make-up, ten carbon to a nitrogen and a hundred to a phosphorus.
        double ammonia = state.get(lake.water(), Stock.AMMONIA);
        double phosphate = state.get(lake.water(), Stock.PHOSPHATE);
        assertThat(ammonia).isCloseTo(0.125 * reduced, withinPercentage(0.5));
        assertThat(phosphate).isCloseTo(0.0125 * reduced, withinPercentage(0.5));
        assertThat(state.get(ground, Stock.ORGANIC_NITROGEN) / state.get(ground, Stock.ORGANIC_CARBON))
                .isCloseTo(0.1, withinPercentage(1e-4));
        // Wolf-Gladrow et al. 2007: +1 a nitrate that goes, +1 an ammonium, -1 a phosphate that comes.
        assertThat(state.get(lake.water(), Stock.ALKALINITY) - alkalinity)
                .isCloseTo(reduced + ammonia - phosphate, withinPercentage(0.01));
    }
}
