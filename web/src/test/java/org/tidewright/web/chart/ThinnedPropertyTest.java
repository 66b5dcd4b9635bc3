package org.tidewright.web.chart;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Comparator;
import java.util.List;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.IntRange;

class ThinnedPropertyTest {
    @Provide
    Arbitrary<List<Thinned.Value>> values() {
        Arbitrary<Double> place = Arbitraries.doubles().between(0, 1).ofScale(6);
        Arbitrary<Double> number = Arbitraries.doubles().between(-5, 5).ofScale(4);
        return Combinators.combine(place, number, number, Arbitraries.integers().between(1, 60))
                .as((at, one, other, count) ->
                        new Thinned.Value(at, count, Math.min(one, other), (one + other) / 2, Math.max(one, other)))
                .list()
                .ofMaxSize(400)
                .map(list -> list.stream()
                        .sorted(Comparator.comparingDouble(Thinned.Value::at))
                        .toList());
    }

    @Property(tries = 300)
    void thinningNeverLosesAnExtreme(
            @ForAll("values") List<Thinned.Value> values, @ForAll @IntRange(min = 1, max = 200) int columns) {
        List<Thinned.Column> thinned = Thinned.of(values, columns);
        assertThat(thinned.size()).isLessThanOrEqualTo(Math.min(columns, values.size()));
        for (Thinned.Value value : values) {
            assertThat(thinned).anySatisfy(column -> {
                assertThat(value.at()).isBetween(column.from(), column.to());
                assertThat(column.least()).isLessThanOrEqualTo(value.least());
                assertThat(column.most()).isGreaterThanOrEqualTo(value.most());
            });
        }
        for (Thinned.Column column : thinned) {
            List<Thinned.Value> within = values.stream()
                    .filter(value -> value.at() >= column.from() && value.at() <= column.to())
                    .toList();
            assertThat(within.stream().mapToDouble(Thinned.Value::least).min()).hasValue(column.least());
            assertThat(within.stream().mapToDouble(Thinned.Value::most).max()).hasValue(column.most());
            assertThat(column.to() - column.from()).isLessThanOrEqualTo(1.0 / columns + 1e-9);
        }
    }

    @Property(tries = 100)
    void theMeanOfAllIsKept(@ForAll("values") List<Thinned.Value> values) {
        double sum = values.stream()
                .mapToDouble(value -> value.count() * value.mean())
                .sum();
        List<Thinned.Column> thinned = Thinned.of(values, 17);
        assertThat(thinned.stream()
                        .mapToDouble(column -> column.count() * column.mean())
                        .sum())
                .isCloseTo(sum, within(1e-6 * (1 + Math.abs(sum))));
    }
}
