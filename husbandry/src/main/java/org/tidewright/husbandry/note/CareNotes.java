package org.tidewright.husbandry.note;

import java.time.Duration;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.tidewright.husbandry.forecast.ChangeText;
import org.tidewright.husbandry.journal.Event;
import org.tidewright.twin.forecast.Change;

/** Lines about animals, work, what was seen, and levers that were moved. */
final class CareNotes {
    private static final Pattern FED = Pattern.compile(
            "(?<mass>[\\d.]+\\s*[a-zA-Z]+)\\s+(?<food>.+)|(?<foodFirst>.+?)\\s+(?<massLast>[\\d.]+\\s*[a-zA-Z]+)");
    private static final Pattern ANIMALS =
            Pattern.compile("(?<count>\\d{1,4})\\s+(?<animal>.+?)(?:\\s+of\\s+(?<length>[\\d.]+\\s*\\S+))?");
    private static final Pattern WORK = Pattern.compile("(?<work>.+?)(?:\\s+for\\s+(?<took>[\\d.]+\\s*[a-z]+))?");

    private CareNotes() {}

    /** {@code fed 2 g pellets}, {@code fed pellets 2 g}. */
    static Event fed(String rest, Note note) throws UnreadableNote {
        Matcher fed = FED.matcher(rest);
        if (!fed.matches()) {
            throw note.wrong("“" + rest + "”", "a mass and a food: fed 2 g pellets");
        }
        boolean massFirst = fed.group("mass") != null;
        return new Event.Fed(
                massFirst ? fed.group("food") : fed.group("foodFirst"),
                note.amount(massFirst ? fed.group("mass") : fed.group("massLast"), "kg"));
    }

    /** {@code arrived 2 clownfish of 6 cm}. */
    static Event animals(String rest, Note note, Event.Move move) throws UnreadableNote {
        Matcher animals = ANIMALS.matcher(rest);
        if (!animals.matches()) {
            throw note.wrong("“" + rest + "”", "how many of which animal: arrived 2 clownfish");
        }
        String length = animals.group("length");
        return new Event.AnimalMoved(
                animals.group("animal"),
                Integer.parseInt(animals.group("count")),
                move,
                length == null ? null : note.amount(length, "m"));
    }

    /** {@code did clean the skimmer for 10 min}. */
    static Event did(String rest, Note note) throws UnreadableNote {
        Matcher work = WORK.matcher(rest);
        if (!work.matches()) {
            throw note.wrong("nothing after “did”", "what was done: did clean the skimmer for 10 min");
        }
        String took = work.group("took");
        if (took == null || !note.isAmount(took, "s")) {
            return new Event.WorkDone(rest, null);
        }
        return new Event.WorkDone(work.group("work"), Duration.ofSeconds(Math.round(note.amount(took, "s"))));
    }

    static Event saw(String rest, Note note) throws UnreadableNote {
        if (rest.isEmpty()) {
            throw note.wrong("nothing after “saw”", "what was seen: saw white spots on the surgeonfish");
        }
        return new Event.Observation(rest, null);
    }

    /** {@code set bicarbonate dose 45 mL/d}: as a change of a forecast is written, and for good. */
    static Event set(String rest, Note note) throws UnreadableNote {
        try {
            Change change = ChangeText.read(rest, note.levers());
            if (change.from() > 0 || Double.isFinite(change.lasts())) {
                throw note.wrong(
                        "a time in the line", "where the lever stands now; write another line when it moves back");
            }
            return new Event.LeverMoved(change.lever().name(), change.lever().unit(), null, change.value());
        } catch (ChangeText.Unreadable unreadable) {
            throw new UnreadableNote(String.valueOf(unreadable.getMessage()));
        }
    }
}
