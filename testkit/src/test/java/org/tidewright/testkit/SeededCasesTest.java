package org.tidewright.testkit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;

class SeededCasesTest {
    @Test
    void aPropertyIsTriedOnAThousandDifferentCases() {
        Set<Long> drawn = new HashSet<>();
        SeededCases.check(draw -> drawn.add(draw.anyLong()));
        assertThat(drawn).hasSize(1000);
    }

    @Test
    void everyRunTriesTheSameCases() {
        List<Double> once = new ArrayList<>();
        List<Double> again = new ArrayList<>();
        SeededCases.check(50, draw -> once.add(draw.between(0, 1)));
        SeededCases.check(50, draw -> again.add(draw.between(0, 1)));
        assertThat(again).isEqualTo(once);
    }

    @Test
    void aFailureNamesTheCaseItsSeedAndWhatWasDrawn() {
        assertThatThrownBy(() -> SeededCases.check(
                        20, draw -> assertThat(draw.whole(1, 6)).as("the die").isLessThan(6)))
                .isInstanceOf(AssertionError.class)
                .hasMessageMatching("(?s)case \\d+ of 20 fails, seed -?\\d+L, drawn \\[6\\]: .*the die.*")
                .hasCauseInstanceOf(AssertionError.class);
    }

    @Test
    void anExceptionIsAFailureToo() {
        assertThatThrownBy(() -> SeededCases.check(draw -> {
                    throw new IOException("disk full");
                }))
                .isInstanceOf(AssertionError.class)
                .hasMessageContaining("case 1 of 1000")
                .hasMessageEndingWith("disk full");
    }

    @Test
    void aSeedRunsItsCaseAgain() {
        List<String> drawn = new ArrayList<>();
        SeededCases.only(-4L, draw -> drawn.add(draw.text() + draw.between(0, 1)));
        SeededCases.only(-4L, draw -> drawn.add(draw.text() + draw.between(0, 1)));
        assertThat(drawn.get(1)).isEqualTo(drawn.get(0));
    }

    @Test
    void rangesIncludeTheirEndsAndNothingBeyond() {
        Set<Double> numbers = new HashSet<>();
        Set<Integer> wholes = new HashSet<>();
        Set<Integer> sizes = new HashSet<>();
        SeededCases.check(draw -> {
            numbers.add(draw.between(-2, 3));
            wholes.add(draw.whole(Integer.MIN_VALUE, Integer.MAX_VALUE));
            sizes.add(draw.list(1, 3, Draw::anyLong).size());
        });
        assertThat(numbers).contains(-2.0, 3.0).allMatch(number -> number >= -2 && number <= 3);
        assertThat(wholes).contains(Integer.MIN_VALUE, Integer.MAX_VALUE);
        assertThat(sizes).containsExactlyInAnyOrder(1, 2, 3);
    }

    @Test
    void textsAreEmptyLongPlainAndStrange() {
        List<String> texts = new ArrayList<>();
        SeededCases.check(draw -> texts.add(draw.text()));
        assertThat(texts).contains("").anyMatch(text -> text.length() > 200);
        assertThat(texts).anyMatch(text -> text.length() > 10 && text.matches("[ -~]+"));
        assertThat(texts).anyMatch(text -> text.chars().anyMatch(c -> c < ' '));
        assertThat(texts).anyMatch(text -> text.codePoints().anyMatch(c -> c >= 0xD800 && c < 0xE000));
    }
}
