package org.tidewright.twin.mechanism.nutrient;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.withinPercentage;

import org.junit.jupiter.api.Test;
import org.tidewright.twin.TestVessel;
import org.tidewright.twin.contract.Body;
import org.tidewright.twin.contract.Stock;
import org.tidewright.twin.run.Network;
import org.tidewright.twin.run.Run;
import org.tidewright.twin.run.State;

/** Waste on the ground of a lake at 25 °C. It uses a twenty-thousandth of the lake's oxygen, so 1e-5 is asked for. */
class DecayTest {
    private static final double DAY = 86_400;
    private static final double RATE = 0.02 / DAY;
    private static final double CLOSE = 1e-3; // percent

    private final TestVessel lake = new TestVessel(1e5, 1);
    private final Body ground =
            lake.builder().pool("ground", Stock.ORGANIC_CARBON, Stock.ORGANIC_NITROGEN, Stock.ORGANIC_PHOSPHORUS);

    private Network network = new TestVessel(1, 1).builder().build();

    private State waste(double growing, double oxygen) {
        lake.with(new Decay(
                "decay",
                ground,
                lake.water(),
                lake.world(),
                lake.exactly("rate", "1/s", RATE),
                lake.exactly("phosphorus", "1", 2),
                growing));
        network = lake.builder().build();
        return lake.filled(network, 25, oxygen)
                .set(ground, Stock.ORGANIC_CARBON, 1)
                .set(ground, Stock.ORGANIC_NITROGEN, 0.1)
                .set(ground, Stock.ORGANIC_PHOSPHORUS, 0.01);
    }

    /**
     * By first order, oxygen O of 0.2 mol/m³ and its half-saturation of 0.01: a = 0.2/0.21 of the rate breathes, and the
     * whole falls apart at 0.3 + 0.7 a of it; phosphorus goes twice as fast.
     */
    @Test
    void carbonNitrogenAndPhosphorusFallExponentiallyEachAtItsRate() {
        State state = waste(0, 0.2);
        Run run = TestVessel.run(network, state);
        double aerobic = 0.2 / 0.21;
        double rate = RATE * (0.3 + 0.7 * aerobic);
        for (int day : new int[] {1, 10, 50}) {
            run.until(day * DAY);
            double passed = rate * day * DAY;
            double breathed = RATE * aerobic * day * DAY;
            assertThat(state.get(ground, Stock.ORGANIC_CARBON))
                    .as("day %d", day)
                    .isCloseTo(Math.exp(-breathed), withinPercentage(CLOSE));
            assertThat(state.get(ground, Stock.ORGANIC_NITROGEN))
                    .isCloseTo(0.1 * Math.exp(-passed), withinPercentage(CLOSE));
            assertThat(state.get(ground, Stock.ORGANIC_PHOSPHORUS))
                    .isCloseTo(0.01 * Math.exp(-2 * passed), withinPercentage(CLOSE));
        }
    }

    /** Anderson 1995: 118 oxygen to 106 carbon of plankton down to ammonia. */
    @Test
    void everyCarbonBurntCosts118Over106Oxygen() {
        State state = waste(0, 0.2);
        double oxygen = state.get(lake.world(), Stock.OXYGEN);
        TestVessel.run(network, state).until(30 * DAY);
        double burnt = 1 - state.get(ground, Stock.ORGANIC_CARBON);
        assertThat(state.get(lake.world(), Stock.OXYGEN) - oxygen)
                .isCloseTo(118.0 / 106 * burnt, withinPercentage(CLOSE));
        assertThat(state.get(lake.water(), Stock.INORGANIC_CARBON)).isCloseTo(burnt, withinPercentage(CLOSE));
        assertThat(state.get(lake.water(), Stock.AMMONIA))
                .isCloseTo(0.1 - state.get(ground, Stock.ORGANIC_NITROGEN), withinPercentage(CLOSE));
    }

    /** Where cells grow on it four tenths of the carbon stay, and the rest goes as before. */
    @Test
    void cellsThatGrowOnItKeepFourTenthsOfTheCarbon() {
        State state = waste(1, 0.2);
        TestVessel.run(network, state).until(20 * DAY);
        double aerobic = 0.2 / 0.21;
        double rate = 0.6 * aerobic * RATE;
        assertThat(state.get(ground, Stock.ORGANIC_CARBON))
                .isCloseTo(Math.exp(-rate * 20 * DAY), withinPercentage(CLOSE));
    }

    @Test
    void withoutOxygenNothingIsBurntAndThreeTenthsOfTheNitrogenStillComeFree() {
        State state = waste(0, 0);
        TestVessel.run(network, state).until(20 * DAY);
        assertThat(state.get(ground, Stock.ORGANIC_CARBON)).isEqualTo(1);
        assertThat(state.get(ground, Stock.ORGANIC_NITROGEN))
                .isCloseTo(0.1 * Math.exp(-0.3 * RATE * 20 * DAY), withinPercentage(CLOSE));
    }

    /**
     * Carbon without nitrogen, on which cells grow: each nitrate they take brings the two oxygens that eight electrons
     * spare, so that 0.6 of 118/106 is breathed for each carbon burnt less two for each nitrate.
     */
    @Test
    void nitrateBuiltIntoCellsSparesTwoOxygensEach() {
        State state = waste(1, 0.2)
                .set(ground, Stock.ORGANIC_NITROGEN, 0)
                .set(ground, Stock.ORGANIC_PHOSPHORUS, 0)
                .dissolve(lake.water(), Stock.NITRATE, 0.1)
                .dissolve(lake.water(), Stock.PHOSPHATE, 0.01);
        double oxygen = state.get(lake.world(), Stock.OXYGEN);
        TestVessel.run(network, state).until(10 * DAY);
        double burnt = 1 - state.get(ground, Stock.ORGANIC_CARBON);
        double nitrate = 0.1 * 1e5 - state.get(lake.water(), Stock.NITRATE);
        assertThat(nitrate).isGreaterThan(1e-3);
        assertThat(state.get(lake.world(), Stock.OXYGEN) - oxygen)
                .isCloseTo(118.0 / 106 * burnt - 2 * nitrate, withinPercentage(0.01));
    }
}
