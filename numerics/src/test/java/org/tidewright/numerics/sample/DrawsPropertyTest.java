package org.tidewright.numerics.sample;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.tidewright.testkit.Draw;
import org.tidewright.testkit.SeededCases;

class DrawsPropertyTest {
    @Test
    void aValueDoesNotDependOnWhatElseIsDrawnOrInWhichOrder() {
        SeededCases.check(draw -> {
            long seed = draw.anyLong();
            int number = draw.whole(0, 5000);
            List<String> names =
                    draw.list(1, 8, DrawsPropertyTest::name).stream().distinct().toList();
            Draws alone = new Draws(seed, number);
            String watched = names.get(0);
            double uniform = alone.uniform(watched);
            double normal = alone.normal(watched);
            long first = alone.stream(watched).nextLong();

            List<String> shuffled = new ArrayList<>(names);
            Collections.shuffle(shuffled, new Random(draw.anyLong()));
            Draws together = new Draws(seed, number);
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
        });
    }

    @Test
    void aStratifiedValueDoesNotDependOnWhatElseIsDrawn() {
        SeededCases.check(draw -> {
            long seed = draw.anyLong();
            int count = draw.whole(1, 300);
            String watched = name(draw);
            String other = name(draw);
            StratifiedDraws alone = new StratifiedDraws(seed, count);
            StratifiedDraws together = new StratifiedDraws(seed, count);
            for (int i = count - 1; i >= 0; i--) {
                together.uniform(other, i);
                assertThat(together.uniform(watched, i)).isEqualTo(alone.uniform(watched, i));
                assertThat(together.normal(watched, i)).isEqualTo(StandardNormal.quantile(alone.uniform(watched, i)));
            }
        });
    }

    @Test
    void everyStratumHasExactlyOneDraw() {
        SeededCases.check(draw -> {
            int count = draw.whole(1, 3000);
            StratifiedDraws draws = new StratifiedDraws(draw.anyLong(), count);
            String name = draw.text();
            int[] held = new int[count];
            for (int i = 0; i < count; i++) {
                held[(int) Math.floor(draws.uniform(name, i) * count)]++;
            }
            assertThat(held).containsOnly(1);
        });
    }

    private static String name(Draw draw) {
        return draw.text() + draw.oneOf("a", "b", "ab", "é");
    }
}
