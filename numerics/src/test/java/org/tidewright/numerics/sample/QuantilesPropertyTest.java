package org.tidewright.numerics.sample;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.tidewright.testkit.Draw;
import org.tidewright.testkit.SeededCases;

class QuantilesPropertyTest {
    /** The definition read literally: straight lines between the points ((k - 1/3) / (n + 1/3), k-th smallest). */
    private static double byDefinition(double[] values, double probability) {
        int n = values.length;
        double[] smallestFirst = new double[n];
        boolean[] taken = new boolean[n];
        for (int k = 0; k < n; k++) {
            int least = -1;
            for (int i = 0; i < n; i++) {
                if (!taken[i] && (least < 0 || values[i] < values[least])) {
                    least = i;
                }
            }
            taken[least] = true;
            smallestFirst[k] = values[least];
        }
        if (probability <= plotting(1, n)) {
            return smallestFirst[0];
        }
        for (int k = 1; k < n; k++) {
            if (probability <= plotting(k + 1, n)) {
                double part = (probability - plotting(k, n)) / (plotting(k + 1, n) - plotting(k, n));
                return smallestFirst[k - 1] + part * (smallestFirst[k] - smallestFirst[k - 1]);
            }
        }
        return smallestFirst[n - 1];
    }

    private static double[] array(List<Double> sample) {
        return sample.stream().mapToDouble(Double::doubleValue).toArray();
    }

    private static double plotting(int k, int n) {
        return (k - 1.0 / 3) / (n + 1.0 / 3);
    }

    @Test
    void quantilesAreThoseOfTheDefinition() {
        SeededCases.check(draw -> {
            double[] values = array(sample(draw));
            double probability = draw.between(0, 1);
            assertThat(Quantiles.quantile(values, probability))
                    .isCloseTo(byDefinition(values, probability), within(1e-10));
        });
    }

    @Test
    void quantilesRiseWithTheProbabilityAndStayWithinTheSample() {
        SeededCases.check(draw -> {
            List<Double> sample = sample(draw);
            double one = draw.between(0, 1);
            double other = draw.between(0, 1);
            Quantiles quantiles = Quantiles.of(array(sample));
            double lower = quantiles.at(Math.min(one, other));
            double upper = quantiles.at(Math.max(one, other));
            assertThat(lower).isLessThanOrEqualTo(upper + 1e-12);
            assertThat(lower).isGreaterThanOrEqualTo(quantiles.at(0));
            assertThat(upper).isLessThanOrEqualTo(quantiles.at(1));
            assertThat(sample).contains(quantiles.at(0), quantiles.at(1));
        });
    }

    @Test
    void neversMakeAQuantileInfiniteJustWhenItReachesThem() {
        SeededCases.check(draw -> {
            int finite = draw.whole(1, 60);
            int nevers = draw.whole(1, 60);
            int thousandths = draw.whole(0, 1000);
            double[] values = new double[finite + nevers];
            for (int i = 0; i < values.length; i++) {
                values[i] = i < finite ? i : Double.POSITIVE_INFINITY;
            }
            // In whole numbers, 3000 times the position n p + (p + 1) / 3: beyond the last finite rank, or not.
            long position = 3L * values.length * thousandths + thousandths + 1000;
            assertThat(Double.isInfinite(Quantiles.quantile(values, thousandths / 1000.0)))
                    .isEqualTo(position > 3000L * finite);
        });
    }

    private static List<Double> sample(Draw draw) {
        return draw.list(1, 40, value -> value.between(-100, 100));
    }
}
