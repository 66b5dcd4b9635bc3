package org.tidewright.husbandry.estimate;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

/** The handbook's section 3.3, to its printed digits. */
class FittedSlopeTest {
    /** Example 3.2: eight daily tests with an error of 0.2 tell a slope to 0.03086. */
    @Test
    void eightDailyTestsTellASlopeAsWellAsTheExampleSays() {
        assertThat(FittedSlope.error(0.2, 8, 1)).isCloseTo(0.03086, within(5e-6));
    }

    /** And a change of 0.1 a day shows after eight tests where the earlier slope is known, after ten where it is not. */
    @Test
    void aChangeShowsAfterAsManyTestsAsTheExampleSays() {
        assertThat(fewest(1)).isEqualTo(8);
        assertThat(fewest(Math.sqrt(2))).isEqualTo(10);
    }

    private static int fewest(double doubt) {
        int tests = 2;
        while (Foresight.SEEN * doubt * FittedSlope.error(0.2, tests, 1) > 0.1) {
            tests++;
        }
        return tests;
    }

    /** Example 3.3 and the table: length of the best series, and the smallest change that it shows. */
    @Test
    void theBestSeriesAndWhatItShowsAreThoseOfTheTable() {
        double[] errors = {0.1, 0.2, 0.3};
        double[] walks = {0.01, 0.03, 0.06};
        double[][] days = {{9.9, 5.7, 4.1}, {14.0, 8.1, 5.7}, {17.2, 9.9, 7.0}};
        double[][] shown = {{0.062, 0.141, 0.238}, {0.074, 0.168, 0.283}, {0.082, 0.186, 0.313}};
        for (int i = 0; i < 3; i++) {
            for (int j = 0; j < 3; j++) {
                double best = FittedSlope.best(errors[i], walks[j]);
                assertThat(best).isCloseTo(days[i][j], within(0.05));
                assertThat(Foresight.SEEN * Math.sqrt(FittedSlope.variance(errors[i], walks[j], best)))
                        .isCloseTo(shown[i][j], within(0.0005));
            }
        }
    }

    @Test
    void aLongerOrAShorterSeriesTellsLess() {
        double best = FittedSlope.best(0.2, 0.03);
        double least = FittedSlope.variance(0.2, 0.03, best);
        assertThat(FittedSlope.variance(0.2, 0.03, 1.2 * best)).isGreaterThan(least);
        assertThat(FittedSlope.variance(0.2, 0.03, best / 1.2)).isGreaterThan(least);
    }
}
