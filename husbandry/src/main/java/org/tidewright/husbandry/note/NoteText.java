package org.tidewright.husbandry.note;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.tidewright.husbandry.journal.Event;
import org.tidewright.plan.fault.Spelling;
import org.tidewright.plan.method.WaterQuantity;
import org.tidewright.plan.model.Plan;
import org.tidewright.twin.system.Levers;

/**
 * Reads what a keeper writes into the journal.
 *
 * <pre>
 * alkalinity 8.1 dKH by photometer
 * check alkalinity by photometer 8.4 for 8.0 dKH
 * dose vinegar 20 mL
 * changed 40 L
 * fed 2 g pellets
 * set bicarbonate dose 45 mL/d
 * arrived 2 clownfish
 * did clean the skimmer for 10 min
 * saw white spots on the surgeonfish
 * watched clownfish: ate some, 90 breaths, dusty film
 * treated 40 L with the medicine's name by label
 * fallow white spot began
 * </pre>
 */
public final class NoteText {
    private static final int LONGEST = 2000;

    /** What a line may begin with, apart from a quantity. */
    private static final Map<String, LineReader> FIRST_WORDS = firstWords();

    private NoteText() {}

    private static Map<String, LineReader> firstWords() {
        Map<String, LineReader> words = new TreeMap<>();
        words.put("check", ReadingNotes::check);
        words.put("dose", WaterNotes::dose);
        words.put("changed", WaterNotes::changed);
        words.put("fed", CareNotes::fed);
        words.put("set", CareNotes::set);
        words.put("arrived", (rest, note) -> CareNotes.animals(rest, note, Event.Move.ARRIVED));
        words.put("left", (rest, note) -> CareNotes.animals(rest, note, Event.Move.LEFT));
        words.put("died", (rest, note) -> CareNotes.animals(rest, note, Event.Move.DIED));
        words.put("did", CareNotes::did);
        words.put("saw", CareNotes::saw);
        words.put("watched", HealthNotes::watched);
        words.put("treated", HealthNotes::treated);
        words.put("fallow", HealthNotes::fallow);
        return words;
    }

    /** Reads what follows the first word. */
    interface LineReader {
        Event read(String rest, Note note) throws UnreadableNote;
    }

    /**
     * Reads one line.
     *
     * @param plan of the system it is about, for the names of its solutions and the water it mixes
     * @param levers of its twin
     */
    public static Event read(String text, Plan plan, Levers levers) throws UnreadableNote {
        Note note = new Note(text.strip(), plan, levers);
        if (note.text().isEmpty() || note.text().length() > LONGEST) {
            throw new UnreadableNote(note.text(), "a text of " + note.text().length() + " characters", example());
        }
        String[] words = note.text().split("\\s+", 2);
        String first = words[0].toLowerCase(Locale.ROOT);
        LineReader reader = FIRST_WORDS.get(first);
        if (reader != null) {
            return note.refusing(reader, words.length == 2 ? words[1] : "");
        }
        if (ReadingNotes.beginsWithQuantity(note.text())) {
            return note.refusing(ReadingNotes::reading, note.text());
        }
        throw new UnreadableNote(note.text(), "“" + first + "” at its beginning", example(), suggestion(first));
    }

    private static String suggestion(String first) {
        List<String> known = Stream.concat(
                        FIRST_WORDS.keySet().stream(),
                        Arrays.stream(WaterQuantity.values()).map(WaterQuantity::words))
                .toList();
        return Spelling.suggestion(first, known);
    }

    private static String example() {
        return "a reading such as “alkalinity 8.1 dKH”, or a line that begins with one of "
                + String.join(", ", FIRST_WORDS.keySet());
    }
}
