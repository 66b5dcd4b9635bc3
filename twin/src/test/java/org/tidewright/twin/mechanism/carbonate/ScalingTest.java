package org.tidewright.twin.mechanism.carbonate;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.withinPercentage;

import org.junit.jupiter.api.Test;
import org.tidewright.twin.TestVessel;
import org.tidewright.twin.contract.Body;
import org.tidewright.twin.contract.Stock;
import org.tidewright.twin.run.Network;
import org.tidewright.twin.run.Run;
import org.tidewright.twin.run.State;

/** Lime that falls out of a lake at 25 °C, so slowly that its saturation stays. */
class ScalingTest {
    private static final double DAY = 86_400;
    private static final double BARE = 1e-3;
    private static final double VOLUME = 1e5;

    private final TestVessel lake = new TestVessel(VOLUME, 1);
    private final Body scale =
            lake.builder().pool("scale", Stock.CALCIUM, Stock.MAGNESIUM, Stock.INORGANIC_CARBON, Stock.ALKALINITY);

    private Network network = new TestVessel(1, 1).builder().build();

    private State lake(double carbon) {
        lake.with(new Scaling(lake.water(), scale, lake.exactly("bare", "1/m", BARE), lake.exactly("fine", "1/m", 40)));
        network = lake.builder().build();
        return lake.filled(network, 25, 0.2)
                .dissolve(lake.water(), Stock.ALKALINITY, 2.5)
                .dissolve(lake.water(), Stock.INORGANIC_CARBON, carbon);
    }

    /**
     * Burton and Walter 1987, as printed for 25 °C: 40.6 µmol/(m² h) (Ω - 1)^1.7. Near Ω 3.5 the rounding of 1.7, which is
     * 1.6685 in the fit, makes 3 %; even in time to a millionth, for the saturation falls by less.
     */
    @Test
    void atAConstantSaturationItGrowsEvenlyAtThePrintedRate() {
        State state = lake(2.15);
        Run run = TestVessel.run(network, state);
        double saturation = run.now().solution(lake.water()).aragoniteSaturation();
        assertThat(saturation).isBetween(3.0, 4.0);
        run.until(DAY);
        double first = state.get(scale, Stock.CALCIUM);
        double printed = 40.6e-6 / 3600 * Math.pow(saturation - 1, 1.7) * BARE * VOLUME * DAY;
        assertThat(first).isCloseTo(printed, withinPercentage(4));
        double exponent = 0.0628 * 25 + 0.0985;
        double fitted = (14.9 + 25 * (1.47 - 0.0177 * 25)) * 1e-6 / 3600 * Math.pow(saturation - 1, exponent);
        assertThat(first).isCloseTo(fitted * BARE * VOLUME * DAY, withinPercentage(0.01));
        run.until(3 * DAY);
        assertThat(state.get(scale, Stock.CALCIUM)).isCloseTo(3 * first, withinPercentage(0.01));
    }

    @Test
    void everyCalciumTakesACarbonAndTwoOfAlkalinity() {
        State state = lake(2.15);
        TestVessel.run(network, state).until(DAY);
        double calcium = state.get(scale, Stock.CALCIUM);
        assertThat(state.get(scale, Stock.INORGANIC_CARBON)).isCloseTo(calcium, withinPercentage(1e-9));
        assertThat(state.get(scale, Stock.ALKALINITY)).isCloseTo(2 * calcium, withinPercentage(1e-9));
    }

    @Test
    void belowSaturationNothingFalls() {
        State state = lake(2.5);
        Run run = TestVessel.run(network, state);
        assertThat(run.now().solution(lake.water()).aragoniteSaturation()).isLessThan(1);
        run.until(DAY);
        assertThat(state.get(scale, Stock.CALCIUM)).isZero();
    }
}
