package org.tidewright.numerics.sample;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.NotBlank;
import net.jqwik.api.constraints.Size;
import net.jqwik.api.constraints.UniqueElements;

class DrawsPropertyTest {
    @Property
    void aValueDoesNotDependOnWhatElseIsDrawnOrInWhichOrder(
            @ForAll long seed,
            @ForAll @IntRange(max = 5000) int draw,
            @ForAll @Size(min = 1, max = 8) @UniqueElements List<@NotBlank String> names,
            @ForAll long order) {
        Draws alone = new Draws(seed, draw);
        String watched = names.get(0);
        double uniform = alone.uniform(watched);
        double normal = alone.normal(watched);
        long first = alone.stream(watched).nextLong();

        List<String> shuffled = new ArrayList<>(names);
        Collections.shuffle(shuffled, new Random(order));
        Draws together = new Draws(seed, draw);
        for (String name : shuffled) {
            together.stream(name).nextLong();
            double value = together.uniform(name);
            if (name.equals(watched)) {
                assertThat(value).isEqualTo(uniform);
                assertThat(together.normal(name)).isEqualTo(normal);
                assertThat(together.stream(name).nextLong()).isEqualTo(first);
            } else {
                assertThat(value).isNotEqualTo(uniform);
            }
        }
    }

    @Property
    void aStratifiedValueDoesNotDependOnWhatElseIsDrawn(
            @ForAll long seed,
            @ForAll @IntRange(min = 1, max = 300) int count,
            @ForAll @NotBlank String watched,
            @ForAll @NotBlank String other) {
        StratifiedDraws alone = new StratifiedDraws(seed, count);
        StratifiedDraws together = new StratifiedDraws(seed, count);
        for (int draw = count - 1; draw >= 0; draw--) {
            together.uniform(other, draw);
            assertThat(together.uniform(watched, draw)).isEqualTo(alone.uniform(watched, draw));
            assertThat(together.normal(watched, draw)).isEqualTo(StandardNormal.quantile(alone.uniform(watched, draw)));
        }
    }

    @Property
    void everyStratumHasExactlyOneDraw(
            @ForAll long seed, @ForAll @IntRange(min = 1, max = 3000) int count, @ForAll String name) {
        StratifiedDraws draws = new StratifiedDraws(seed, count);
        int[] held = new int[count];
        for (int draw = 0; draw < count; draw++) {
            held[(int) Math.floor(draws.uniform(name, draw) * count)]++;
        }
        assertThat(held).containsOnly(1);
    }
}
