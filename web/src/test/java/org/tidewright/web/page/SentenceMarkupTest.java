package org.tidewright.web.page;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.tidewright.husbandry.advice.Figure;
import org.tidewright.husbandry.advice.Measure;
import org.tidewright.husbandry.advice.Sentence;
import org.tidewright.plan.model.UnitSystem;

class SentenceMarkupTest {
    private static final Figure ROOM = Figure.about(Measure.VOLUME, 0.024, 0.003);

    @Test
    void theDoubtStandsBetweenValueAndUnit() {
        assertThat(SentenceMarkup.of(ROOM, UnitSystem.METRIC).html())
                .isEqualTo("<span class=\"sounding\">24\u00a0<span class=\"pm\">±\u00a03</span>"
                        + "<span class=\"u\">L</span></span>");
    }

    @Test
    void aRangeStandsAfterTheUnit() {
        Figure after = Figure.between(Measure.DURATION, 7 * 3600, 5 * 3600, 10 * 3600);
        assertThat(SentenceMarkup.of(after, UnitSystem.METRIC).html())
                .isEqualTo("<span class=\"sounding\">7<span class=\"u\">h</span>\u00a0"
                        + "<span class=\"pm\">(5–10)</span></span>");
    }

    @Test
    void figuresAreToldInTheReadersUnits() {
        // 24 L are 24 / 3.785411784 = 6.34 US gallons, 3 L are 0.79.
        assertThat(SentenceMarkup.of(ROOM, UnitSystem.US).html())
                .contains("6.3\u00a0<span class=\"pm\">±\u00a00.8</span>");
    }

    @Test
    void aSourceIsALetterThatLeadsToItsNote() {
        Sentence sentence = Sentence.of("Room: ", Sentence.figure(ROOM, "a"), ".");
        assertThat(SentenceMarkup.of(sentence, List.of("a", "b"), UnitSystem.METRIC)
                        .html())
                .contains("<a class=\"src\" href=\"#source-a\" aria-label=\"source a\">a</a>.")
                .endsWith("<a class=\"src\" href=\"#source-b\" aria-label=\"source b\">b</a>");
    }

    @Test
    void wordsAreEscapedAndAlarmsMarked() {
        Sentence sentence = Sentence.of(Sentence.alarm("Act & hurry:"), " <b>now</b> \"1\"");
        assertThat(SentenceMarkup.of(sentence, UnitSystem.METRIC).html())
                .isEqualTo("<span class=\"alarm\">Act &amp; hurry:</span> &lt;b&gt;now&lt;/b&gt; &quot;1&quot;");
    }

    @Test
    void jsonCannotEndItsScriptElement() {
        assertThat(Markup.json("{\"name\":\"</script><b>\"}").html())
                .isEqualTo("{\"name\":\"\\u003c/script>\\u003cb>\"}");
    }
}
