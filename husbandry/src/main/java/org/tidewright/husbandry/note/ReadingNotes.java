package org.tidewright.husbandry.note;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.tidewright.husbandry.journal.Event;
import org.tidewright.plan.method.QuantityUnit;
import org.tidewright.plan.method.TestMethod;
import org.tidewright.plan.method.TestMethods;
import org.tidewright.plan.method.WaterQuantity;

/** Lines about what was measured, and by what. */
final class ReadingNotes {
    private static final String NUMBER = "[-+\u2212]?(?:\\d+(?:\\.\\d+)?|\\.\\d+)";
    private static final Pattern MEASURED = Pattern.compile(
            "(?<number>" + NUMBER + ")(?:\\s*(?<unit>(?!by\\s)[^\\d\\s.,].*?))?(?:\\s+by\\s+(?<method>.+))?");
    private static final Pattern CHECKED = Pattern.compile("by\\s+(?<method>.+?)\\s+(?<shown>" + NUMBER
            + ")\\s+for\\s+(?<standard>" + NUMBER + ")(?:\\s*(?:±|\\+-|\\+/-)\\s*(?<error>" + NUMBER
            + "))?(?:\\s*(?<unit>[^\\d\\s.,].*))?");

    private ReadingNotes() {}

    static boolean beginsWithQuantity(String text) {
        return longestName(text) != null;
    }

    static Event reading(String text, Note note) throws UnreadableNote {
        String name = longestName(text);
        WaterQuantity quantity = quantity(name, note);
        String told = text.substring(name == null ? 0 : name.length()).strip();
        Matcher measured = MEASURED.matcher(told);
        if (!measured.matches()) {
            throw note.wrong(quoted(told), "a number with its unit: " + quantity.words() + " " + units(quantity));
        }
        String by = measured.group("method");
        return new Event.Reading(
                quantity,
                number(measured.group("number")),
                unit(quantity, measured.group("unit"), note),
                by == null ? null : method(quantity, by, note).key());
    }

    static Event check(String text, Note note) throws UnreadableNote {
        String name = longestName(text);
        WaterQuantity quantity = quantity(name, note);
        String told = text.substring(name == null ? 0 : name.length()).strip();
        Matcher checked = CHECKED.matcher(told);
        if (!checked.matches()) {
            throw note.wrong(
                    quoted(told),
                    "what the method showed and what is right: check alkalinity by photometer 8.4 for 8.0 ± 0.1 dKH");
        }
        String error = checked.group("error");
        return new Event.MethodChecked(
                quantity,
                method(quantity, checked.group("method"), note).key(),
                unit(quantity, checked.group("unit"), note),
                number(checked.group("shown")),
                number(checked.group("standard")),
                error == null ? 0 : number(error));
    }

    /** The longest name of a quantity that the text begins with, as it stands there. */
    private static @Nullable String longestName(String text) {
        String lower = text.toLowerCase(Locale.ROOT);
        return Arrays.stream(WaterQuantity.values())
                .flatMap(quantity -> quantity.names().stream())
                .filter(name -> lower.startsWith(name)
                        && (lower.length() == name.length() || !Character.isLetterOrDigit(lower.charAt(name.length()))))
                .max((a, b) -> Integer.compare(a.length(), b.length()))
                .orElse(null);
    }

    private static WaterQuantity quantity(@Nullable String name, Note note) throws UnreadableNote {
        return (name == null ? Optional.<WaterQuantity>empty() : WaterQuantity.named(name))
                .orElseThrow(() -> note.wrong(
                        "no quantity",
                        "one of "
                                + Arrays.stream(WaterQuantity.values())
                                        .map(WaterQuantity::words)
                                        .collect(Collectors.joining(", "))));
    }

    /** A plain number is taken only where the quantity has one without unit: 8 could be degrees or millimoles. */
    private static QuantityUnit unit(WaterQuantity quantity, @Nullable String told, Note note) throws UnreadableNote {
        return quantity.unitSpelt(told == null ? "" : told)
                .orElseThrow(() -> note.wrong(
                        told == null ? "a number without a unit" : "the unit " + quoted(told),
                        "one of " + units(quantity)));
    }

    private static String units(WaterQuantity quantity) {
        return quantity.units().stream()
                .map(unit -> unit.symbol().isEmpty() ? "a plain number" : unit.symbol())
                .collect(Collectors.joining(", "));
    }

    /** A method by its key, its name, or a part of its name that no other method of the quantity has. */
    private static TestMethod method(WaterQuantity quantity, String told, Note note) throws UnreadableNote {
        String wanted = told.strip().toLowerCase(Locale.ROOT);
        List<TestMethod> methods = TestMethods.of(quantity);
        List<TestMethod> exact = methods.stream()
                .filter(method -> method.key().replace('_', ' ').equals(wanted)
                        || method.key().equals(wanted)
                        || method.name().toLowerCase(Locale.ROOT).equals(wanted))
                .toList();
        List<TestMethod> found = !exact.isEmpty()
                ? exact
                : methods.stream()
                        .filter(method -> (method.key().replace('_', ' ') + " "
                                        + method.name().toLowerCase(Locale.ROOT))
                                .contains(wanted))
                        .toList();
        if (found.size() != 1) {
            String among = (found.isEmpty() ? methods : found)
                    .stream().map(method -> method.key().replace('_', ' ')).collect(Collectors.joining(", "));
            throw note.wrong(
                    (found.isEmpty() ? "the unknown method " : "more than one method called ") + quoted(told),
                    "one of " + among);
        }
        return found.get(0);
    }

    private static double number(String text) {
        return Double.parseDouble(text.replace('\u2212', '-'));
    }

    private static String quoted(String told) {
        return told.isEmpty() ? "nothing after the quantity" : "“" + told + "”";
    }
}
