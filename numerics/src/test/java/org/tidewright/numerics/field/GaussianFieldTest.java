package org.tidewright.numerics.field;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import org.junit.jupiter.api.Test;
import org.tidewright.testkit.Draw;
import org.tidewright.testkit.SeededCases;

class GaussianFieldTest {
    private static final double[] NO_ERRORS = {0, 0};

    @Test
    void aNumberMeasuredTwiceIsTheirWeightedMean() {
        // A constant with prior deviation 10, readings 3 ± 1 and 6 ± 2: precision 0.01 + 1 + 0.25.
        GaussianField field = new GaussianField(
                Covariance.offset(10), new double[][] {{0}, {5}}, new double[] {3, 6}, new double[] {1, 2});
        GaussianField.Expected here = field.at(new double[] {99});
        assertThat(here.mean()).isCloseTo((3 / 1.0 + 6 / 4.0) / 1.26, within(1e-9));
        assertThat(here.variance()).isCloseTo(1 / 1.26, within(1e-9));
    }

    @Test
    void twoPointsPredictAsTheClosedFormOfTwoByTwoSays() {
        Covariance rough = Covariance.rough(2, 1);
        double[][] places = {{0}, {1}};
        GaussianField field = new GaussianField(rough, places, new double[] {1, -1}, NO_ERRORS);
        double a = Math.sqrt(3);
        double apart = 4 * (1 + a) * Math.exp(-a);
        double half = 4 * (1 + a / 2) * Math.exp(-a / 2);
        assertThat(field.at(new double[] {0.5}).mean()).isCloseTo(0, within(1e-9));
        assertThat(field.at(new double[] {0.5}).variance()).isCloseTo(4 - 2 * half * half / (4 + apart), within(1e-9));
    }

    @Test
    void anErrorlessMeasurementIsMetExactlyAndWithoutDoubt() {
        SeededCases.check(200, draw -> {
            double[][] places = places(draw, draw.whole(1, 15));
            double[] values = numbers(draw, places.length);
            GaussianField field = new GaussianField(mixed(), places, values, new double[places.length]);
            for (int i = 0; i < places.length; i++) {
                assertThat(field.at(places[i]).mean()).isCloseTo(values[i], within(1e-5));
                assertThat(field.at(places[i]).deviation()).isLessThan(1e-3);
            }
        });
    }

    @Test
    void whatIsLeftOutIsExpectedAsAFieldWithoutItExpects() {
        SeededCases.check(100, draw -> {
            double[][] places = places(draw, 6);
            double[] values = numbers(draw, 6);
            double[] errors = {0.1, 0.2, 0.1, 0.3, 0.1, 0.2};
            GaussianField whole = new GaussianField(mixed(), places, values, errors);
            GaussianField less = new GaussianField(
                    mixed(), Arrays.copyOf(places, 5), Arrays.copyOf(values, 5), Arrays.copyOf(errors, 5));
            assertThat(whole.without(5).mean()).isCloseTo(less.at(places[5]).mean(), within(1e-7));
            assertThat(whole.without(5).variance()).isCloseTo(less.at(places[5]).variance() + 0.04, within(1e-7));
        });
    }

    @Test
    void oneMoreMeasurementNeverMakesAPlaceLessSure() {
        SeededCases.check(200, draw -> {
            double[][] places = places(draw, 8);
            double[] values = numbers(draw, 8);
            double[] errors = {0.1, 0.1, 0.1, 0.1, 0.1, 0.1, 0.1, 0.1};
            double[] asked = places(draw, 1)[0];
            double before = Double.POSITIVE_INFINITY;
            for (int known = 0; known <= 8; known++) {
                GaussianField field = new GaussianField(
                        mixed(),
                        Arrays.copyOf(places, known),
                        Arrays.copyOf(values, known),
                        Arrays.copyOf(errors, known));
                double variance = field.at(asked).variance();
                assertThat(variance).isLessThanOrEqualTo(before + 1e-9);
                before = variance;
            }
        });
    }

    @Test
    void theMeanAloneIsTheSameMean() {
        SeededCases.check(50, draw -> {
            GaussianField field = new GaussianField(mixed(), places(draw, 7), numbers(draw, 7), new double[7]);
            double[] asked = places(draw, 1)[0];
            assertThat(field.meanAt(asked)).isCloseTo(field.at(asked).mean(), within(1e-9));
        });
    }

    @Test
    void farFromEveryMeasurementTheRoughPartIsForgotten() {
        GaussianField field = new GaussianField(
                Covariance.rough(0.5, 0.2), new double[][] {{0, 0}}, new double[] {1}, new double[] {0.1});
        assertThat(field.at(new double[] {5, 5}).mean()).isCloseTo(0, within(1e-9));
        assertThat(field.at(new double[] {5, 5}).deviation()).isCloseTo(0.5, within(1e-9));
    }

    @Test
    void contradictingMeasurementsOfOnePlaceAreAveraged() {
        GaussianField field = new GaussianField(
                Covariance.rough(1, 1), new double[][] {{0}, {0}}, new double[] {0.2, 0.4}, new double[] {1e-3, 1e-3});
        assertThat(field.at(new double[] {0}).mean()).isCloseTo(0.3, within(1e-5));
    }

    @Test
    void theLikelihoodOfOneNumberIsTheBellCurves() {
        GaussianField field =
                new GaussianField(Covariance.offset(3), new double[][] {{0}}, new double[] {5}, new double[] {4});
        assertThat(field.logLikelihood()).isCloseTo(-0.5 - Math.log(5) - 0.5 * Math.log(2 * Math.PI), within(1e-9));
    }

    @Test
    void numbersThatDoNotBelongTogetherAreRefused() {
        assertThatThrownBy(() -> new GaussianField(
                        Covariance.offset(1), new double[][] {{0}}, new double[] {1, 2}, new double[] {1}))
                .hasMessage("1 places, 2 values and 1 errors do not belong together");
    }

    private static Covariance mixed() {
        return Covariance.offset(0.3).plus(Covariance.slope(1, 2, 0.2)).plus(Covariance.rough(0.4, 0.25));
    }

    private static double[][] places(Draw draw, int number) {
        double[][] places = new double[number][];
        for (int i = 0; i < number; i++) {
            places[i] = new double[] {draw.between(0, 1.5), draw.between(0, 0.6), draw.between(0, 0.5)};
        }
        return places;
    }

    private static double[] numbers(Draw draw, int number) {
        double[] numbers = new double[number];
        for (int i = 0; i < number; i++) {
            numbers[i] = draw.between(-1, 1);
        }
        return numbers;
    }
}
