package org.tidewright.husbandry.note;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.tidewright.husbandry.TestPlans;
import org.tidewright.husbandry.journal.Event;
import org.tidewright.plan.model.Plan;
import org.tidewright.plan.model.UnitSystem;
import org.tidewright.twin.system.Levers;
import org.tidewright.twin.system.SystemTwin;

class NoteWordsTest {
    private static final Plan PLAN = TestPlans.example("harbour-room");
    private static final Levers LEVERS = SystemTwin.of(PLAN).levers();

    @ParameterizedTest
    @ValueSource(
            strings = {
                "alkalinity 8.1 dKH by photometer",
                "salinity 1.0264 SG 25/25 by swing arm hydrometer",
                "pH 8.21",
                "temperature 78 °F",
                "phosphate 0.03 mg/L PO4",
                "check alkalinity by photometer 8.4 for 8 ± 0.1 dKH",
                "dose vinegar 20 mL",
                "dose sodium bicarbonate 12 g",
                "changed 40 L",
                "fed 2 g pellets",
                "arrived 2 clownfish of 6 cm",
                "died 1 cardinalfish",
                "did clean the skimmer for 10 min",
                "saw white spots on the surgeonfish",
                "set bicarbonate dose 45 mL/d",
                "set feed 150 %",
                "watched all: ate all",
                "watched clownfish: ate some, 90 breaths, dusty film, clamped fins",
                "watched all: not fed, sores or red patches",
                "treated 40 L with an invented medicine by label",
                "treated with medicated food by veterinarian: for ten days, by label",
                "fallow white spot began",
                "fallow unknown parasite broken"
            })
    void aLineIsWrittenAsItWasRead(String text) throws UnreadableNote {
        assertThat(NoteWords.of(NoteText.read(text, PLAN, LEVERS), UnitSystem.METRIC))
                .isEqualTo(text);
    }

    @ParameterizedTest
    @ValueSource(strings = {"changed 10 gal", "fed 0.2 oz pellets", "changed 40 L", "arrived 2 clownfish of 2.5 in"})
    void anAmountIsToldInTheUnitItWasWrittenInWhoeverReads(String text) throws UnreadableNote {
        Event event = NoteText.read(text, PLAN, LEVERS);
        assertThat(NoteWords.of(event, UnitSystem.METRIC)).isEqualTo(text);
        assertThat(NoteWords.of(event, UnitSystem.US)).isEqualTo(text);
    }
}
