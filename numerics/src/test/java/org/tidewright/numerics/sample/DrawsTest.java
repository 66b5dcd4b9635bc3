package org.tidewright.numerics.sample;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.Arrays;
import java.util.List;
import java.util.function.IntToDoubleFunction;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/** The seeds are fixed, so each of these either always holds or never does. */
class DrawsTest {
    private static final int DRAWS = 100_000;
    private static final List<String> NAMES = List.of("heater", "heater ", "Heater", "pump", "a", "b", "");

    private static double[] sample(IntToDoubleFunction of, int count) {
        return IntStream.range(0, count).mapToDouble(of).toArray();
    }

    /** Largest distance between the sample's steps and the straight line: the statistic of Kolmogorov and Smirnov. */
    private static double distanceFromUniform(double[] values) {
        double[] sorted = values.clone();
        Arrays.sort(sorted);
        double largest = 0;
        for (int i = 0; i < sorted.length; i++) {
            largest = Math.max(largest, sorted[i] - (double) i / sorted.length);
            largest = Math.max(largest, (i + 1.0) / sorted.length - sorted[i]);
        }
        return largest;
    }

    private static double correlation(double[] a, double[] b) {
        double meanA = Arrays.stream(a).average().orElseThrow();
        double meanB = Arrays.stream(b).average().orElseThrow();
        double both = 0;
        double onlyA = 0;
        double onlyB = 0;
        for (int i = 0; i < a.length; i++) {
            both += (a[i] - meanA) * (b[i] - meanB);
            onlyA += (a[i] - meanA) * (a[i] - meanA);
            onlyB += (b[i] - meanB) * (b[i] - meanB);
        }
        return both / Math.sqrt(onlyA * onlyB);
    }

    @Test
    void drawsOfANameAreEvenlySpread() {
        for (String name : NAMES) {
            double[] values = sample(draw -> new Draws(42, draw).uniform(name), DRAWS);
            // Kolmogorov's limit: exceeded once in a thousand at 1.95 / sqrt(n).
            assertThat(distanceFromUniform(values)).as(name).isLessThan(1.95 / Math.sqrt(DRAWS));
        }
    }

    @Test
    void namesSeedsAndNeighbouringDrawsAreUncorrelated() {
        double[] reference = sample(draw -> new Draws(42, draw).uniform("heater"), DRAWS);
        // Under independence the correlation has standard deviation 1 / sqrt(n); four of them allowed.
        double allowed = 4 / Math.sqrt(DRAWS);
        for (String name : NAMES.subList(1, NAMES.size())) {
            double[] other = sample(draw -> new Draws(42, draw).uniform(name), DRAWS);
            assertThat(Math.abs(correlation(reference, other))).as(name).isLessThan(allowed);
        }
        assertThat(Math.abs(correlation(reference, sample(draw -> new Draws(43, draw).uniform("heater"), DRAWS))))
                .isLessThan(allowed);
        assertThat(Math.abs(correlation(reference, sample(draw -> new Draws(42, draw + 1).uniform("heater"), DRAWS))))
                .isLessThan(allowed);
    }

    @Test
    void aStreamStartsAfreshEachTimeAndIsNotTheStreamOfAnotherNameOrDraw() {
        Draws draws = new Draws(1, 0);
        long[] first = draws.stream("noise").longs(50).toArray();
        assertThat(draws.stream("noise").longs(50).toArray()).containsExactly(first);
        assertThat(draws.stream("other").longs(50).toArray()).doesNotContain(first);
        assertThat(new Draws(1, 1).stream("noise").longs(50).toArray()).doesNotContain(first);
    }

    @Test
    void stratifiedQuantilesOfTheNormalAreFarSmootherThanIndependentOnes() {
        int count = 1000;
        StratifiedDraws stratified = new StratifiedDraws(7, count);
        for (String name : NAMES) {
            Quantiles spread = Quantiles.of(sample(draw -> stratified.normal(name, draw), count));
            for (double p : new double[] {0.05, 0.25, 0.5, 0.75, 0.95}) {
                // One draw a stratum: no quantile can be off by more than one stratum on either side.
                assertThat(spread.at(p))
                        .isBetween(StandardNormal.quantile(p - 1.0 / count), StandardNormal.quantile(p + 1.0 / count));
            }
        }
    }

    @Test
    void stratifiedNamesAreUncorrelated() {
        int count = 20_000;
        StratifiedDraws draws = new StratifiedDraws(7, count);
        double[] reference = sample(draw -> draws.uniform("heater", draw), count);
        for (String name : NAMES.subList(1, NAMES.size())) {
            double[] other = sample(draw -> draws.uniform(name, draw), count);
            assertThat(Math.abs(correlation(reference, other))).as(name).isLessThan(4 / Math.sqrt(count));
        }
    }

    @Test
    void everyOrderOfTheStrataIsAsLikelyAsAnyOther() {
        int names = 6000;
        int[] seen = new int[27];
        for (int i = 0; i < names; i++) {
            StratifiedDraws three = new StratifiedDraws(11, 3);
            int order = 0;
            for (int draw = 0; draw < 3; draw++) {
                order = 3 * order + (int) (3 * three.uniform("name " + i, draw));
            }
            seen[order]++;
        }
        double expected = names / 6.0;
        double chiSquare = Arrays.stream(seen)
                .filter(count -> count > 0)
                .mapToDouble(count -> (count - expected) * (count - expected) / expected)
                .sum();
        assertThat(Arrays.stream(seen).filter(count -> count > 0).count()).isEqualTo(6);
        // Chi-square of five degrees of freedom: exceeded once in a thousand at 20.5.
        assertThat(chiSquare).isLessThan(20.5);
    }

    @Test
    void theLargestEnsembleStillHasOneDrawAStratum() {
        int count = 1 << 20;
        StratifiedDraws draws = new StratifiedDraws(3, count);
        boolean[] held = new boolean[count];
        for (int draw = 0; draw < count; draw++) {
            int stratum = (int) (draws.uniform("heater", draw) * count);
            assertThat(held[stratum]).isFalse();
            held[stratum] = true;
        }
    }

    @Test
    void numbersOutsideTheEnsembleAreRefused() {
        assertThatThrownBy(() -> new Draws(1, -1)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> new StratifiedDraws(1, 0)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> new StratifiedDraws(1, (1 << 20) + 1)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> new StratifiedDraws(1, 5).uniform("a", 5))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("Draw is 5; it must lie in 0 to 4");
        assertThatThrownBy(() -> new StratifiedDraws(1, 5).normal("a", -1))
                .isInstanceOf(IllegalArgumentException.class);
    }
}
