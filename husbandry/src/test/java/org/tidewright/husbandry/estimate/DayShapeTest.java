package org.tidewright.husbandry.estimate;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.tidewright.testkit.SeededCases;

class DayShapeTest {
    @Test
    void pulsesComeAllAtOnceEachAnEqualShare() {
        DayShape shape = DayShape.pulses(List.of(0.75, 0.25));
        assertThat(shape.by(3.2)).isEqualTo(3);
        assertThat(shape.by(3.25)).isEqualTo(3.5);
        assertThat(shape.by(3.8)).isEqualTo(4);
    }

    @Test
    void aWindowMayRunOverMidnight() {
        DayShape shape = DayShape.window(22 / 24.0, 9 / 24.0, Double.POSITIVE_INFINITY);
        assertThat(shape.by(5 + 7 / 24.0) - shape.by(5)).isCloseTo(7 / 9.0, within(1e-12));
        assertThat(shape.by(5 + 22 / 24.0) - shape.by(5 + 7 / 24.0)).isCloseTo(0, within(1e-12));
        assertThat(shape.by(6) - shape.by(5 + 22 / 24.0)).isCloseTo(2 / 9.0, within(1e-12));
    }

    /** In the light of 10 to 12 hours 2 to 3 times as fast: peak to peak 0.17 to 0.27 of a day's use; handbook, section 3.5. */
    @Test
    void whatGoesFasterInTheLightSawsThroughTheDayAsTheHandbookSays() {
        assertThat(swing(DayShape.window(0.4, 10 / 24.0, 2))).isBetween(0.165, 0.175);
        assertThat(swing(DayShape.window(0.4, 12 / 24.0, 3))).isBetween(0.245, 0.275);
    }

    private static double swing(DayShape shape) {
        double least = 1;
        double most = -1;
        for (int i = 0; i < 2400; i++) {
            double ahead = shape.ahead(7 + i / 2400.0);
            least = Math.min(least, ahead);
            most = Math.max(most, ahead);
        }
        return most - least;
    }

    @Test
    void everyShapeBringsOneDaysWorthADayAndIsAheadOfNothingInTheMean() {
        SeededCases.check(200, draw -> {
            DayShape shape = draw.oneOf(
                    DayShape.EVEN,
                    DayShape.window(draw.between(0, 0.999), draw.between(0.01, 0.99), draw.between(1.1, 5)),
                    DayShape.pulses(List.of(draw.between(0, 0.99), draw.between(0, 0.99), draw.between(0, 0.99))));
            double time = draw.between(0, 50);
            assertThat(shape.by(time + 1) - shape.by(time)).isCloseTo(1, within(1e-9));
            double mean = 0;
            for (int i = 0; i < 5000; i++) {
                mean += shape.ahead(3 + (i + 0.5) / 5000) / 5000;
            }
            assertThat(mean).isCloseTo(0, within(1e-3));
        });
    }

    @Test
    void aDayThatGivesBackIsRefused() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new DayShape(new double[] {0, 0.5, 1}, new double[] {0, 1.2, 1}));
    }
}
