package org.tidewright.husbandry.nutrient;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.function.DoubleUnaryOperator;
import org.junit.jupiter.api.Test;
import org.tidewright.plan.source.Basis;
import org.tidewright.twin.forecast.Quantity;

/** Against curves whose answer is known in closed form. */
class NutrientCurveTest {
    private static final TargetBand BAND =
            new TargetBand(Quantity.PHOSPHATE, 0.02, 0.1, "nobody", Basis.COMMON_PRACTICE);

    private static NutrientCurve curve(DoubleUnaryOperator asRun, DoubleUnaryOperator changed) {
        double[] days = new double[85];
        double[] base = new double[85];
        double[] other = new double[85];
        for (int i = 0; i < days.length; i++) {
            days[i] = i == 0 ? 0 : i - 0.5;
            base[i] = asRun.applyAsDouble(days[i]);
            other[i] = changed.applyAsDouble(days[i]);
        }
        return new NutrientCurve(Quantity.PHOSPHATE, BAND, days, base, other, null);
    }

    /** 1 - exp(-t/10) is at half of its end, which is 1 within 0.03 %, after 10 ln 2 days. */
    @Test
    void halfWayOfAnExponentialIsItsHalfTime() {
        NutrientCurve curve = curve(t -> 1, t -> 2 - Math.exp(-t / 10));
        assertThat(curve.halfWay()).isCloseTo(10 * Math.log(2), within(0.02));
    }

    /** exp(-t/20) loses 1 - exp(-7/20) in every week. */
    @Test
    void theSteepestFallIsAWeeksShare() {
        NutrientCurve curve = curve(t -> 0.2, t -> 0.2 * Math.exp(-t / 20));
        assertThat(curve.steepestFall()).isCloseTo(1 - Math.exp(-0.35), within(0.01));
    }

    @Test
    void whatNothingMovesIsNeverHalfWay() {
        assertThat(curve(t -> 1, t -> 1).halfWay()).isInfinite();
    }

    @Test
    void outsideIsCountedInPartsOfTheEndThatIsPassed() {
        assertThat(BAND.beyond(0.05)).isZero();
        assertThat(BAND.beyond(0.2)).isCloseTo(1, within(1e-12));
        assertThat(BAND.beyond(0.01)).isCloseTo(1, within(1e-12));
    }
}
