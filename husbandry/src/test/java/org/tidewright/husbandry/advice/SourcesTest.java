package org.tidewright.husbandry.advice;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.tidewright.plan.source.Basis;

class SourcesTest {
    @Test
    void theSameSourceKeepsItsLetter() {
        Sources sources = new Sources();
        String weir = sources.key("weir", Basis.PUBLISHED, "ISO 1438");
        assertThat(sources.key("pipe", Basis.PUBLISHED, "ISO 1438")).isNotEqualTo(weir);
        assertThat(sources.key("weir", Basis.PUBLISHED, "ISO 1438")).isEqualTo(weir);
        assertThat(sources.key("weir", Basis.FROM_MEMORY, "ISO 1438")).isNotEqualTo(weir);
        assertThat(sources.all()).extracting(Source::key).containsExactly("a", "b", "c");
    }

    @Test
    void afterZComesTwoLetters() {
        Sources sources = new Sources();
        for (int i = 0; i < 26 * 27 + 1; i++) {
            sources.key("source " + i, Basis.COMPUTED, "");
        }
        assertThat(sources.all().get(25).key()).isEqualTo("z");
        assertThat(sources.all().get(26).key()).isEqualTo("aa");
        assertThat(sources.all().get(26 * 27 - 1).key()).isEqualTo("zz");
        assertThat(sources.all().get(26 * 27).key()).isEqualTo("aaa");
        assertThat(sources.all()).extracting(Source::key).doesNotHaveDuplicates();
    }
}
