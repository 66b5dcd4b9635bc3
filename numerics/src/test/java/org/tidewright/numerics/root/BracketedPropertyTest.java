package org.tidewright.numerics.root;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.function.DoubleUnaryOperator;
import org.junit.jupiter.api.Test;
import org.tidewright.testkit.SeededCases;

/** Whatever the function, the answer lies within the tolerance of its one change of sign, and in time. */
class BracketedPropertyTest {
    private static final double TOLERANCE = 1e-10;

    /** Functions that change sign at the origin only, some of them made to mislead an interpolation. */
    private static double shape(int kind, double x) {
        return switch (kind) {
            case 0 -> x;
            case 1 -> x * x * x;
            case 2 -> Math.signum(x) * Math.pow(Math.abs(x), 0.1);
            case 3 -> Math.expm1(30 * x);
            case 4 -> -Math.expm1(-300 * x);
            case 5 -> x > 0 ? 1e-300 : -1e300;
            case 6 -> Math.pow(x, 21);
            case 7 -> Math.atan(1e9 * x);
            case 8 -> x > 0 ? x + 1 : x - 1e-6;
            default -> x * (1.1 + Math.sin(1000 * x));
        };
    }

    @Test
    void rootLiesWithinTheToleranceAndTheBoundOnEvaluationsHolds() {
        SeededCases.check(2000, draw -> {
            int kind = draw.whole(0, 9);
            double at = draw.between(-1, 1);
            double below = draw.between(1e-6, 2);
            double above = draw.between(1e-6, 2);
            int[] count = new int[1];
            DoubleUnaryOperator f = x -> {
                count[0]++;
                return shape(kind, x - at);
            };
            double root = Bracketed.root(f, at - below, at + above, TOLERANCE);
            boolean flat = shape(kind, root - at) == 0;
            assertThat(flat || Math.abs(root - at) <= TOLERANCE).isTrue();
            // Oliveira and Takahashi 2021, theorem 2.1, and the two ends.
            assertThat(count[0]).isLessThanOrEqualTo(bisections(below + above) + 1 + 2);
        });
    }

    @Test
    void pastLiesBeyondTheChangeOfSignAndWithinTheTolerance() {
        SeededCases.check(2000, draw -> {
            int kind = draw.whole(0, 9);
            double at = draw.between(-1, 1);
            double below = draw.between(1e-6, 2);
            double above = draw.between(1e-6, 2);
            DoubleUnaryOperator f = x -> shape(kind, x - at);
            double past = Bracketed.past(f, at - below, at + above, TOLERANCE);
            assertThat(f.applyAsDouble(past)).isPositive();
            double near = Math.max(at - below, past - TOLERANCE);
            assertThat(f.applyAsDouble(Math.nextDown(near))).isLessThanOrEqualTo(0);
        });
    }

    private static int bisections(double width) {
        return (int) Math.ceil(Math.log(width / TOLERANCE) / Math.log(2));
    }
}
