package org.tidewright.husbandry.journal;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.tidewright.plan.method.QuantityUnit;
import org.tidewright.plan.method.WaterQuantity;

class EventTest {
    private static final QuantityUnit DEGREES = WaterQuantity.ALKALINITY.units().get(0);

    @Test
    void aReadingIsKeptAsWrittenAndToldInTheCoherentUnit() {
        Event.Reading reading = new Event.Reading(WaterQuantity.ALKALINITY, 8.1, DEGREES, null);
        assertThat(reading.written()).isEqualTo(8.1);
        // 10 mg/L of CaO, 56.0774 g/mol and two equivalents a mole, are one degree.
        assertThat(reading.value()).isCloseTo(8.1 * 20 / 56.0774, within(1e-12));
    }

    @Test
    void aReadingInAUnitOfAnotherQuantityIsRefused() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new Event.Reading(WaterQuantity.CALCIUM, 420, DEGREES, null))
                .withMessageContaining("calcium is not read in dKH");
    }

    @Test
    void aReadingThatCannotBeMeantIsRefused() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new Event.Reading(WaterQuantity.ALKALINITY, 160, DEGREES, null))
                .withMessageContaining("cannot be meant");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new Event.Reading(WaterQuantity.ALKALINITY, Double.NaN, DEGREES, null));
    }

    @Test
    void aDoseOfNothingIsRefused() {
        assertThatIllegalArgumentException().isThrownBy(() -> new Event.Dose("vinegar", null, null, null));
        assertThatIllegalArgumentException().isThrownBy(() -> new Event.Dose("vinegar", null, null, 0.0));
    }

    @Test
    void aCheckOrTreatmentThatCannotBeMeantIsRefused() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new Event.AnimalsChecked(null, Event.Appetite.ALL, 500, Set.of()))
                .withMessageContaining("0 to 400");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new Event.Treated(" ", Event.Word.LABEL, 0.04, null))
                .withMessageContaining("name of what was given");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new Event.Treated("an invented medicine", Event.Word.LABEL, 0.0, null));
    }

    @Test
    void everySignSaysWhatItLooksLikeAndWhatItMayBe() {
        assertThat(Sign.values()).allSatisfy(sign -> {
            assertThat(sign.looks()).endsWith(".");
            assertThat(sign.mayBe()).isNotBlank();
            // A line of the log lists them between commas, after a colon.
            assertThat(sign.words()).doesNotContain(",", ":");
            assertThat(Sign.ofWords(sign.words())).contains(sign);
        });
    }

    @Test
    void everyEventHasItsKind() {
        assertThat(Kind.values()).hasSameSizeAs(Event.class.getPermittedSubclasses());
        assertThat(Arrays.stream(Kind.values()).map(Kind::key).map(Kind::ofKey)).allMatch(kind -> kind.isPresent());
        assertThat(Kind.of(new Event.WaterChanged(0.04, Map.of()))).isEqualTo(Kind.WATER_CHANGE);
    }
}
