package org.tidewright.twin.mechanism.nutrient;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import org.junit.jupiter.api.Test;
import org.tidewright.twin.TestVessel;
import org.tidewright.twin.contract.Body;
import org.tidewright.twin.contract.Stock;
import org.tidewright.twin.run.Network;
import org.tidewright.twin.run.Run;
import org.tidewright.twin.run.State;

/** Bacteria on vinegar in a thousand cubic metres at 25 °C. */
class CarbonFedBacteriaTest {
    private static final double DAY = 86_400;
    private static final double VOLUME = 1e3;

    private final TestVessel lake = new TestVessel(VOLUME, 1);
    private final Body dose = lake.builder().pool("dose", Stock.ORGANIC_CARBON);
    private final Body cells =
            lake.builder().pool("cells", Stock.ORGANIC_CARBON, Stock.ORGANIC_NITROGEN, Stock.ORGANIC_PHOSPHORUS);

    private Network network = new TestVessel(1, 1).builder().build();

    private State dosed(double carbon, double nitrate, double ammonia, double lossPerDay) {
        lake.with(new CarbonFedBacteria(
                lake.water(),
                dose,
                cells,
                lake.world(),
                lake.exactly("growth", "1/s", 3 / DAY),
                lake.exactly("loss", "1/s", lossPerDay / DAY),
                VOLUME));
        network = lake.builder().build();
        return lake.filled(network, 25, 0.2)
                .dissolve(lake.water(), Stock.NITRATE, nitrate)
                .dissolve(lake.water(), Stock.AMMONIA, ammonia)
                .dissolve(lake.water(), Stock.PHOSPHATE, 0.005)
                .set(dose, Stock.ORGANIC_CARBON, carbon)
                .set(cells, Stock.ORGANIC_CARBON, 1e-3)
                .set(cells, Stock.ORGANIC_NITROGEN, 1e-3 / 5.831)
                .set(cells, Stock.ORGANIC_PHOSPHORUS, 1e-3 / 5.831 / 17.69);
    }

    /** 3 a day times K's of 0.05, 0.001, 0.00005 and 0.01 mol/m³ in 5, 0.1, 0.005 and 0.2: 2.69 a day, less 0.3. */
    @Test
    void withPlentyTheyGrowExponentially() {
        State state = dosed(5 * VOLUME, 0.1, 0, 0.3);
        Run run = TestVessel.run(network, state);
        double share = 5 / 5.05 * (0.1 / 0.101) * (0.005 / 0.00505) * (0.2 / 0.21) * (0.1 / 0.101);
        for (int day = 1; day <= 3; day++) {
            run.until(day * DAY);
            assertThat(state.get(cells, Stock.ORGANIC_CARBON))
                    .as("day %d", day)
                    .isCloseTo(1e-3 * Math.exp((3 * share - 0.3) * day), withinPercentage(0.3));
        }
    }

    @Test
    void withoutADoseTheyDieAwayExponentiallyIntoWasteAfloat() {
        State state = dosed(0, 0.1, 0, 0.3);
        TestVessel.run(network, state).until(10 * DAY);
        assertThat(state.get(cells, Stock.ORGANIC_CARBON)).isCloseTo(1e-3 * Math.exp(-3), withinPercentage(1e-3));
        assertThat(state.get(lake.water(), Stock.ORGANIC_CARBON))
                .isCloseTo(1e-3 * (1 - Math.exp(-3)), withinPercentage(1e-3));
    }

    /**
     * A gram of carbon eaten makes 0.4 g of cells with 80 mg of nitrogen and 10 mg of phosphorus: 5 and 8 to one by mass.
     * Acetate burns with one oxygen a carbon, cells keep 0.4 of it and each nitrate spares two.
     */
    @Test
    void aDoseDrawsDownNitrateAndPhosphateInItsProportions() {
        State state = dosed(2, 0.1, 0, 0);
        double oxygen = state.get(lake.world(), Stock.OXYGEN);
        double alkalinity = state.get(lake.water(), Stock.ALKALINITY);
        TestVessel.run(network, state).until(200 * DAY);
        double eaten = 2 - state.get(dose, Stock.ORGANIC_CARBON);
        assertThat(eaten).isGreaterThan(0.5);
        double grams = eaten * 12.011;
        double nitrogen = 0.1 * VOLUME - state.get(lake.water(), Stock.NITRATE);
        double phosphorus = 0.005 * VOLUME - state.get(lake.water(), Stock.PHOSPHATE);
        assertThat(nitrogen * 14.007).isCloseTo(0.080 * grams, withinPercentage(0.01));
        assertThat(phosphorus * 30.974).isCloseTo(0.010 * grams, withinPercentage(0.01));
        assertThat(state.get(lake.water(), Stock.INORGANIC_CARBON)).isCloseTo(0.6 * eaten, withinPercentage(0.01));
        assertThat(state.get(lake.world(), Stock.OXYGEN) - oxygen)
                .isCloseTo(0.6 * eaten - 2 * nitrogen, withinPercentage(0.01));
        // Wolf-Gladrow et al. 2007: each nitrate and each phosphate taken up leaves one.
        assertThat(state.get(lake.water(), Stock.ALKALINITY) - alkalinity)
                .isCloseTo(nitrogen + phosphorus, within(1e-6));
    }

    @Test
    void whereThereIsNoNitrateNoneIsTaken() {
        State state = dosed(5 * VOLUME, 0, 0.01, 0);
        TestVessel.run(network, state).until(5 * DAY);
        assertThat(state.get(cells, Stock.ORGANIC_CARBON)).isGreaterThan(1);
        assertThat(state.get(lake.water(), Stock.NITRATE)).isZero();
    }
}
