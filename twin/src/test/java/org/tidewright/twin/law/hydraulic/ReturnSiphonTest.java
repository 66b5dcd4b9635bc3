package org.tidewright.twin.law.hydraulic;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.withinPercentage;
import static org.tidewright.twin.law.hydraulic.ExampleSystem.DISPLAY_SURFACE;
import static org.tidewright.twin.law.hydraulic.ExampleSystem.FOUR_DIGITS;
import static org.tidewright.twin.law.hydraulic.ExampleSystem.LITRES;
import static org.tidewright.twin.law.hydraulic.ExampleSystem.LITRES_PER_HOUR;
import static org.tidewright.twin.law.hydraulic.ExampleSystem.RUNNING_HEAD;
import static org.tidewright.twin.law.hydraulic.ExampleSystem.TEETH;
import static org.tidewright.twin.law.hydraulic.ExampleSystem.VISCOSITY;
import static org.tidewright.twin.law.hydraulic.ExampleSystem.plastic;

import org.assertj.core.data.Percentage;
import org.junit.jupiter.api.Test;

/**
 * The power cut of the {@link ExampleSystem} with its break hole blocked: return line 25 mm, 2.2 m, loss sum 7.1 with
 * the impeller's 3.0, crest 1.30 m over the sump, sump lumped to 0.400 m^2, outlet 30 mm under the crest.
 */
class ReturnSiphonTest {
    private static final Percentage OF_AN_INTEGRATION = withinPercentage(1);

    private static final double CREST_OVER_SUMP = 1.30;
    private static final double SUMP_SURFACE = 0.400;
    private static final double OUTLET_DEPTH = 0.030;

    private static final ReturnSiphon SIPHON =
            new ReturnSiphon(plastic(0.025, 2.2, 7.1 - ReturnSiphon.STOPPED_IMPELLER), ReturnSiphon.STOPPED_IMPELLER);

    @Test
    void theSiphonStartsWithTheFlowOfTheExample() {
        // The example takes the crest's height as the drop; the film over it would add 0.6 %.
        assertThat(SIPHON.flow(CREST_OVER_SUMP, VISCOSITY)).isCloseTo(2820 * LITRES_PER_HOUR, FOUR_DIGITS);
    }

    @Test
    void theDisplayDrainsThroughWeirAndSiphonInTheTimesOfTheExample() {
        Event crest = run(0);
        assertThat(crest.time()).isCloseTo(10.55, OF_AN_INTEGRATION);

        Event broken = run(-OUTLET_DEPTH);
        assertThat(broken.time()).isCloseTo(37.15, OF_AN_INTEGRATION);
        assertThat(broken.siphoned()).isCloseTo(28.52 * LITRES, OF_AN_INTEGRATION);
        assertThat(broken.overTheWeir()).isCloseTo(2.525 * LITRES, OF_AN_INTEGRATION);
        assertThat(broken.siphoned() + broken.overTheWeir())
                .isCloseTo(DISPLAY_SURFACE * (RUNNING_HEAD + OUTLET_DEPTH), withinPercentage(0.01));
    }

    @Test
    void withoutADropNothingRunsBack() {
        assertThat(SIPHON.flow(0, VISCOSITY)).isZero();
        assertThat(SIPHON.flow(-0.2, VISCOSITY)).isZero();
    }

    @Test
    void nonsenseIsRefused() {
        assertThatThrownBy(() -> new ReturnSiphon(plastic(0.025, 2.2, 4), -1)).hasMessageContaining("impeller");
        assertThatThrownBy(() -> SIPHON.flow(Double.NaN, VISCOSITY)).isInstanceOf(IllegalArgumentException.class);
    }

    private record Event(double time, double siphoned, double overTheWeir) {}

    /** Runge and Kutta's fourth-order method over head, siphoned volume and volume over the weir, to a head. */
    private static Event run(double lastHead) {
        double step = 0.01;
        double[] state = {RUNNING_HEAD, 0, 0};
        double time = 0;
        while (state[0] > lastHead) {
            double[] k1 = slopes(state);
            double[] k2 = slopes(moved(state, k1, step / 2));
            double[] k3 = slopes(moved(state, k2, step / 2));
            double[] k4 = slopes(moved(state, k3, step));
            for (int i = 0; i < state.length; i++) {
                state[i] += step / 6 * (k1[i] + 2 * k2[i] + 2 * k3[i] + k4[i]);
            }
            time += step;
        }
        return new Event(time, state[1], state[2]);
    }

    private static double[] slopes(double[] state) {
        double moved = state[1] + state[2];
        double siphon = SIPHON.flow(CREST_OVER_SUMP + state[0] - moved / SUMP_SURFACE, VISCOSITY);
        double weir = TEETH.flow(state[0]);
        return new double[] {-(siphon + weir) / DISPLAY_SURFACE, siphon, weir};
    }

    private static double[] moved(double[] state, double[] slope, double step) {
        double[] next = state.clone();
        for (int i = 0; i < next.length; i++) {
            next[i] += step * slope[i];
        }
        return next;
    }
}
