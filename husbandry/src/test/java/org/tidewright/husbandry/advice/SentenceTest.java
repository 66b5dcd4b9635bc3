package org.tidewright.husbandry.advice;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.tidewright.plan.model.UnitSystem;

class SentenceTest {
    private static final Figure ROOM = Figure.about(Measure.VOLUME, 0.020, 0.003);

    @Test
    void itsTextIsWordsAndFiguresInTheReadersUnits() {
        Sentence sentence = Sentence.of("Room for ", Sentence.figure(ROOM, "a"), ".");
        assertThat(sentence.text(UnitSystem.METRIC)).isEqualTo("Room for 20\u00a0±\u00a03\u00a0L.");
        assertThat(sentence.text(UnitSystem.US)).isEqualTo("Room for 5.3\u00a0±\u00a00.8\u00a0gal.");
    }

    @Test
    void anAlarmIsSpokenAndAReferenceIsNot() {
        Sentence sentence = Sentence.of(Sentence.alarm("Wet"), new Sentence.Part.Reference("a"), ".");
        assertThat(sentence.text(UnitSystem.METRIC)).isEqualTo("Wet.");
    }

    @Test
    void oneSentenceFollowsAnotherWithASpace() {
        assertThat(Sentence.of("One.").then(Sentence.of("Two.")).text(UnitSystem.METRIC))
                .isEqualTo("One. Two.");
    }
}
