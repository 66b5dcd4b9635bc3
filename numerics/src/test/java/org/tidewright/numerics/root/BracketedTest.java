package org.tidewright.numerics.root;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

class BracketedTest {
    @Test
    void findsRootsKnownInClosedForm() {
        assertThat(Bracketed.root(x -> x * x - 2, 0, 2, 1e-12)).isCloseTo(Math.sqrt(2), within(1e-12));
        assertThat(Bracketed.root(Math::cos, 1, 2, 1e-12)).isCloseTo(Math.PI / 2, within(1e-12));
        assertThat(Bracketed.root(x -> Math.exp(x) - 5, -10, 10, 1e-12)).isCloseTo(Math.log(5), within(1e-12));
        // Dottie's number, the fixed point of the cosine (OEIS A003957).
        assertThat(Bracketed.root(x -> Math.cos(x) - x, 0, 1, 1e-14)).isCloseTo(0.7390851332151607, within(1e-14));
        // The cubic Newton solved in 1669 (Wallis 1685): x^3 - 2 x - 5 = 0 (root by OEIS A007493).
        assertThat(Bracketed.root(x -> x * x * x - 2 * x - 5, 2, 3, 1e-14))
                .isCloseTo(2.0945514815423265, within(1e-14));
    }

    @Test
    void withoutAToleranceTheRootIsOneOfTwoNeighbouringNumbers() {
        double root = Bracketed.root(x -> x * x - 2, 0, 2);
        assertThat(Math.nextDown(root) * Math.nextDown(root)).isLessThan(2);
        assertThat(Math.nextUp(root) * Math.nextUp(root)).isGreaterThan(2);
    }

    @Test
    void takesFarFewerEvaluationsThanBisectionOnASmoothFunction() {
        int[] count = new int[1];
        Bracketed.root(
                x -> {
                    count[0]++;
                    return Math.exp(x) - 5;
                },
                0,
                4,
                1e-12);
        // Bisection needs log2(4e12) = 42.
        assertThat(count[0]).isLessThan(14);
    }

    @Test
    void anExactZeroAtAnEndIsTheRoot() {
        assertThat(Bracketed.root(x -> x, 0, 1, 1e-9)).isZero();
        assertThat(Bracketed.root(x -> x - 1, 0, 1, 1e-9)).isEqualTo(1.0);
    }

    @Test
    void pastAJumpLiesOnItsFarSide() {
        double past = Bracketed.past(x -> x < Math.E ? -1 : 3, 0, 10, 1e-13);
        assertThat(past).isGreaterThanOrEqualTo(Math.E).isCloseTo(Math.E, within(2e-13));
    }

    @Test
    void pastAStretchOfZerosIsWhereTheSignAppears() {
        double past = Bracketed.past(x -> x < 1 ? -1 : x <= 3 ? 0 : 1, 0, 10, 1e-12);
        assertThat(past).isGreaterThan(3).isCloseTo(3, within(1e-12));
    }

    @Test
    void pastWithZeroAtTheHighEndIsWhereTheSignEnds() {
        double past = Bracketed.past(x -> Math.min(0, x - 1), 0, 10, 1e-12);
        assertThat(past).isGreaterThanOrEqualTo(1).isCloseTo(1, within(1e-12));
    }

    @Test
    void infiniteValuesHaveASignToo() {
        double root = Bracketed.root(x -> x < 2 ? Double.NEGATIVE_INFINITY : Double.POSITIVE_INFINITY, 0, 5, 1e-12);
        assertThat(root).isCloseTo(2, within(1e-12));
        assertThat(Bracketed.root(x -> Math.log(x) - 1, 0, 50, 1e-12)).isCloseTo(Math.E, within(1e-12));
    }

    @Test
    void aToleranceFinerThanTheDigitsEndsAtNeighbouringNumbers() {
        double past = Bracketed.past(x -> x * x - 2, 0, 2, 1e-300);
        assertThat(past * past).isGreaterThan(2);
        assertThat(Math.nextDown(past) * Math.nextDown(past)).isLessThanOrEqualTo(2);
    }

    @Test
    void noBracketIsRefused() {
        assertThatThrownBy(() -> Bracketed.root(x -> x * x + 1, -1, 1, 1e-9))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("No change of sign between -1.0 (value 2.0) and 1.0 (value 2.0)");
        assertThatThrownBy(() -> Bracketed.root(x -> x, 1, -1, 1e-9)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> Bracketed.root(x -> x, -1, Double.POSITIVE_INFINITY, 1e-9))
                .isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> Bracketed.root(x -> x, -1, 2, 0)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> Bracketed.past(x -> x, 0, 2, 1e-9)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> Bracketed.root(x -> Math.sqrt(x - 1) - 1, 0, 5, 1e-9))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("NaN at 0.0");
    }
}
