package org.tidewright.husbandry.note;

import static java.util.stream.Collectors.joining;

import java.util.Arrays;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import org.tidewright.husbandry.journal.Event;
import org.tidewright.husbandry.journal.Parasite;
import org.tidewright.husbandry.journal.Sign;
import org.tidewright.plan.fault.Spelling;

/** Lines about how animals are, what they were treated with, and a display that is kept without fish. */
final class HealthNotes {
    private static final String EVERYBODY = "all";
    private static final Pattern WATCHED = Pattern.compile("(?:(?<animal>.+?)\\s*:)?\\s*(?<told>[^:]*)");
    private static final Pattern BREATHS = Pattern.compile("(?<count>\\d{1,4}) breaths(?: a minute)?");
    private static final Pattern TREATED = Pattern.compile(
            "(?:(?<volume>[\\d.]+\\s*\\S+)\\s+)?with\\s+(?<what>.+?)"
                    + "\\s+by\\s+(?:the\\s+)?(?<word>label|veterinarian)(?:\\s*:\\s*(?<said>.+))?",
            Pattern.DOTALL);
    private static final Pattern FALLOW = Pattern.compile("(?<parasite>.+?)\\s+(?<turn>began|broken|ended)");

    /** How they ate, as a line says it. */
    private static final Map<String, Event.Appetite> APPETITES = Map.of(
            "ate all", Event.Appetite.ALL,
            "ate some", Event.Appetite.SOME,
            "ate nothing", Event.Appetite.NONE,
            "not fed", Event.Appetite.NOT_FED);

    private HealthNotes() {}

    /** {@code watched clownfish: ate some, 90 breaths, dusty film}. */
    static Event watched(String rest, Note note) throws UnreadableNote {
        Matcher watched = WATCHED.matcher(rest);
        if (!watched.matches()) {
            throw note.wrong("“" + rest + "”", "whom, and how they ate: watched clownfish: ate all");
        }
        String animal = watched.group("animal");
        Event.@Nullable Appetite appetite = null;
        Integer breaths = null;
        Set<Sign> signs = EnumSet.noneOf(Sign.class);
        for (String part : watched.group("told").strip().split("\\s*,\\s*", -1)) {
            String told = part.toLowerCase(Locale.ROOT);
            Matcher counted = BREATHS.matcher(told);
            if (APPETITES.containsKey(told)) {
                appetite = APPETITES.get(told);
            } else if (counted.matches()) {
                breaths = Integer.valueOf(counted.group("count"));
            } else {
                signs.add(sign(told, note));
            }
        }
        if (appetite == null) {
            throw note.wrong("nothing on how they ate", "one of ate all, ate some, ate nothing, not fed");
        }
        boolean everybody = animal == null || animal.equalsIgnoreCase(EVERYBODY);
        return new Event.AnimalsChecked(everybody ? null : animal, appetite, breaths, signs);
    }

    private static Sign sign(String told, Note note) throws UnreadableNote {
        List<String> known = Arrays.stream(Sign.values()).map(Sign::words).toList();
        return Sign.ofWords(told)
                .orElseThrow(() -> note.wrong(
                        "“" + told + "”",
                        "how they ate (ate all, ate some, ate nothing, not fed), breaths such as 60 breaths, or a sign: "
                                + String.join(", ", known),
                        Spelling.suggestion(told, known)));
    }

    static String words(Event.AnimalsChecked checked) {
        String animal = checked.animal() == null ? EVERYBODY : checked.animal();
        String ate = APPETITES.entrySet().stream()
                .filter(entry -> entry.getValue() == checked.appetite())
                .map(Map.Entry::getKey)
                .findFirst()
                .orElseThrow();
        String breaths = checked.breathsPerMinute() == null ? "" : ", " + checked.breathsPerMinute() + " breaths";
        String signs = checked.signs().stream().map(sign -> ", " + sign.words()).collect(joining());
        return "watched " + animal + ": " + ate + breaths + signs;
    }

    /** {@code treated 40 L with the medicine's name by label: what it says}. */
    static Event treated(String rest, Note note) throws UnreadableNote {
        Matcher treated = TREATED.matcher(rest);
        if (!treated.matches()) {
            throw note.wrong(
                    "“" + rest + "”",
                    "how much water, with what and on whose word: treated 40 L with the product's name by label,"
                            + " or by veterinarian; the volume may be left out where it went into food");
        }
        String volume = treated.group("volume");
        return new Event.Treated(
                treated.group("what"),
                treated.group("word").equals("label") ? Event.Word.LABEL : Event.Word.VETERINARIAN,
                volume == null ? null : note.amount(volume, "m^3"),
                treated.group("said"));
    }

    /**
     * The same in words.
     *
     * @param volume in words; null where there is none
     */
    static String words(Event.Treated treated, @Nullable String volume) {
        return "treated " + (volume == null ? "" : volume + " ") + "with " + treated.what() + " by "
                + treated.word().name().toLowerCase(Locale.ROOT)
                + (treated.said() == null ? "" : ": " + treated.said());
    }

    /** {@code fallow white spot began}. */
    static Event fallow(String rest, Note note) throws UnreadableNote {
        List<String> known =
                Arrays.stream(Parasite.values()).map(Parasite::words).toList();
        Matcher fallow = FALLOW.matcher(rest);
        if (!fallow.matches()) {
            throw note.wrong(
                    "“" + rest + "”",
                    "because of what, and began, broken or ended: fallow white spot began; because of what is one of "
                            + String.join(", ", known));
        }
        String parasite = fallow.group("parasite");
        return new Event.Fallow(
                Parasite.ofWords(parasite)
                        .orElseThrow(() -> note.wrong(
                                "“" + parasite + "”",
                                "one of " + String.join(", ", known),
                                Spelling.suggestion(parasite, known))),
                Event.Turn.valueOf(fallow.group("turn").toUpperCase(Locale.ROOT)));
    }

    static String words(Event.Fallow fallow) {
        return "fallow " + fallow.parasite().words() + " "
                + fallow.turn().name().toLowerCase(Locale.ROOT);
    }
}
