package org.tidewright.numerics.optimum;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.tidewright.testkit.SeededCases;

class QuasiNewtonTest {
    /** Rosenbrock 1960, Computer J. 3, 175-184: a bent valley, least at (1, 1). */
    private static final QuasiNewton.Sloping BENT_VALLEY = (place, slopes) -> {
        double x = place[0];
        double across = place[1] - x * x;
        slopes[0] = -400 * x * across - 2 * (1 - x);
        slopes[1] = 200 * across;
        return 100 * across * across + (1 - x) * (1 - x);
    };

    @Test
    void comesToTheEndOfABentValley() {
        QuasiNewton.Least least =
                QuasiNewton.minimise(BENT_VALLEY, new double[] {-1.2, 1}, new double[] {0.1, 0.1}, 1e-14, 200);
        assertThat(least.settled()).isTrue();
        assertThat(least.place()).containsExactly(new double[] {1, 1}, within(1e-6));
    }

    @Test
    void stopsWhenItsEvaluationsAreSpentAndSaysSo() {
        QuasiNewton.Least least =
                QuasiNewton.minimise(BENT_VALLEY, new double[] {-1.2, 1}, new double[] {0.1, 0.1}, 1e-14, 10);
        assertThat(least.settled()).isFalse();
        assertThat(least.evaluations()).isEqualTo(10);
        assertThat(least.value()).isLessThan(24.2); // where it began
    }

    /** A bowl: (x - c) · A (x - c) / 2 with A positive is least at c, whatever the start. */
    @Test
    void findsTheBottomOfEveryBowl() {
        SeededCases.check(100, draw -> {
            double[] centre = {draw.between(-5, 5), draw.between(-5, 5), draw.between(-5, 5)};
            double[] steep = {draw.between(0.1, 30), draw.between(0.1, 30), draw.between(0.1, 30)};
            double twist = draw.between(-0.05, 0.05);
            QuasiNewton.Least least = QuasiNewton.minimise(
                    (place, slopes) -> {
                        double sum = 0;
                        for (int i = 0; i < 3; i++) {
                            slopes[i] = steep[i] * (place[i] - centre[i]);
                            for (int j = 0; j < 3; j++) {
                                slopes[i] += i == j ? 0 : twist * (place[j] - centre[j]);
                            }
                            sum += slopes[i] * (place[i] - centre[i]) / 2;
                        }
                        return sum;
                    },
                    new double[3],
                    new double[] {1, 1, 1},
                    1e-14,
                    100);
            assertThat(least.settled()).isTrue();
            assertThat(least.place()).containsExactly(centre, within(1e-5));
        });
    }
}
