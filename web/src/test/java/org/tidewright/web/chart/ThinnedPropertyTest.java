package org.tidewright.web.chart;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Comparator;
import java.util.List;
import java.util.SplittableRandom;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

class ThinnedPropertyTest {
    private static final int SEEDS = 300;

    private static List<Thinned.Value> values(SplittableRandom dice) {
        return IntStream.range(0, dice.nextInt(400))
                .mapToObj(i -> value(dice))
                .sorted(Comparator.comparingDouble(Thinned.Value::at))
                .toList();
    }

    /** Often at an end of the width or at the edge of a column, where a value is lost most easily. */
    private static Thinned.Value value(SplittableRandom dice) {
        double at = dice.nextInt(4) == 0 ? dice.nextInt(11) / 10.0 : dice.nextDouble();
        double one = dice.nextDouble(-5, 5);
        double other = dice.nextBoolean() ? one : dice.nextDouble(-5, 5);
        return new Thinned.Value(
                at, 1 + dice.nextInt(60), Math.min(one, other), (one + other) / 2, Math.max(one, other));
    }

    @Test
    void thinningNeverLosesAnExtreme() {
        for (int seed = 0; seed < SEEDS; seed++) {
            SplittableRandom dice = new SplittableRandom(seed);
            List<Thinned.Value> values = values(dice);
            int columns = 1 + dice.nextInt(200);
            List<Thinned.Column> thinned = Thinned.of(values, columns);
            assertThat(thinned).as("seed %d", seed).hasSizeLessThanOrEqualTo(Math.min(columns, values.size()));
            int counted = 0;
            for (Thinned.Column column : thinned) {
                List<Thinned.Value> within = values.stream()
                        .filter(value -> value.at() >= column.from() && value.at() <= column.to())
                        .toList();
                counted += within.size();
                assertThat(within.stream().mapToDouble(Thinned.Value::least).min())
                        .as("seed %d", seed)
                        .hasValue(column.least());
                assertThat(within.stream().mapToDouble(Thinned.Value::most).max())
                        .as("seed %d", seed)
                        .hasValue(column.most());
                assertThat(column.to() - column.from()).as("seed %d", seed).isLessThanOrEqualTo(1.0 / columns + 1e-9);
            }
            // Each value lies in exactly one column.
            assertThat(counted).as("seed %d", seed).isEqualTo(values.size());
        }
    }

    @Test
    void theMeanOfAllIsKept() {
        for (int seed = 0; seed < SEEDS; seed++) {
            List<Thinned.Value> values = values(new SplittableRandom(seed));
            double sum = values.stream()
                    .mapToDouble(value -> value.count() * value.mean())
                    .sum();
            assertThat(Thinned.of(values, 17).stream()
                            .mapToDouble(column -> column.count() * column.mean())
                            .sum())
                    .as("seed %d", seed)
                    .isCloseTo(sum, within(1e-9 * (1 + Math.abs(sum)) * values.size() + 1e-9));
        }
    }
}
