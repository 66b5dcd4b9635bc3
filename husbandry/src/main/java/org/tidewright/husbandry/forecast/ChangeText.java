package org.tidewright.husbandry.forecast;

import java.util.Comparator;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.tidewright.plan.fault.Spelling;
import org.tidewright.plan.quantity.AmountText;
import org.tidewright.plan.quantity.SiUnit;
import org.tidewright.twin.forecast.Change;
import org.tidewright.twin.system.Lever;
import org.tidewright.twin.system.Levers;

/**
 * Reads a change as a keeper writes it: a lever, what it is moved to, from when and for how long.
 *
 * <pre>
 * feed +50 %
 * light bar hours 10 h from day 7
 * return pump off from day 3 02:00 for 8 h
 * </pre>
 */
public final class ChangeText {
    private static final double DAY = 86_400;
    private static final int LONGEST = 200;

    private static final Pattern DURATION =
            Pattern.compile("(?<rest>.*?)\\s+for\\s+(?<duration>[^a-zA-Z]*[a-zA-Z]+)\\s*");
    private static final Pattern START = Pattern.compile(
            "(?<rest>.*?)\\s+from\\s+day\\s+(?<day>\\d{1,4})(?:\\s+(?<hour>\\d{1,2}):(?<minute>\\d{2}))?\\s*");
    private static final Pattern RELATIVE =
            Pattern.compile("(?<sign>[+\\-\u2212])\\s*(?<number>\\d+(?:\\.\\d+)?)\\s*%");
    private static final Pattern SHARE = Pattern.compile("(?<number>\\d+(?:\\.\\d+)?)\\s*%");
    private static final Pattern NUMBER = Pattern.compile("\\d+(?:\\.\\d+)?");

    /** The largest change of a share, and amounts by their unit, that the twin's laws can follow. */
    private static final double MOST_FACTOR = 100;

    private static final Map<String, Range> RANGES = Map.of(
            "degC", new Range(0, 45, "0 to 45 °C"),
            "s", new Range(0, DAY, "0 to 24 h"),
            "1/s", new Range(0, 100.0 / 3600, "0 to 100 /h"),
            "m^3/s", new Range(0, 0.01, "0 to 10 L/s"),
            "m^2", new Range(0, 100, "0 to 100 m²"),
            "kg", new Range(0, 100, "0 to 100 kg"),
            "1", new Range(0, 1000, "0 to 1000"));

    private record Range(double least, double most, String words) {}

    /** Why a text is no change, in words for the keeper. */
    public static final class Unreadable extends Exception {
        private static final long serialVersionUID = 1L;

        Unreadable(String text, String found, String expected, String suggestion) {
            super("“" + text + "”: found " + found + "; expected " + expected + "."
                    + (suggestion.isEmpty() ? "" : " " + suggestion));
        }
    }

    private ChangeText() {}

    /** Reads one change. */
    public static Change read(String text, Levers levers) throws Unreadable {
        String stripped = text.strip();
        if (stripped.isEmpty() || stripped.length() > LONGEST) {
            throw new Unreadable(shorten(stripped), "a text of " + stripped.length() + " characters", example(), "");
        }
        Lever lever = lever(stripped, levers);
        String rest = stripped.substring(lever.name().length());
        double lasts = Double.POSITIVE_INFINITY;
        Matcher duration = DURATION.matcher(rest);
        if (duration.matches()) {
            lasts = amount(stripped, duration.group("duration"), "s");
            rest = duration.group("rest");
        }
        double from = 0;
        Matcher start = START.matcher(rest);
        if (start.matches()) {
            from = start(stripped, start);
            rest = start.group("rest");
        }
        double value = value(stripped, rest.strip(), lever);
        if (!(lasts > 0)) {
            throw new Unreadable(stripped, "no time at all after “for”", "a duration such as 8 h or 3 d", "");
        }
        return new Change(lever, value, from, lasts);
    }

    private static Lever lever(String text, Levers levers) throws Unreadable {
        String lower = text.toLowerCase(Locale.ROOT);
        Optional<Lever> longest = levers.all().stream()
                .filter(lever -> {
                    String name = lever.name().toLowerCase(Locale.ROOT);
                    return lower.startsWith(name)
                            && (lower.length() == name.length() || lower.charAt(name.length()) == ' ');
                })
                .max(Comparator.comparingInt(lever -> lever.name().length()));
        if (longest.isPresent()) {
            return longest.get();
        }
        String word = lower.split(" [-+0-9]| on\\b| off\\b| from\\b| stuck\\b", 2)[0].strip();
        throw new Unreadable(
                shorten(text),
                "no lever of this system at its beginning",
                "the name of one, such as feed; --levers lists them",
                Spelling.suggestion(word, levers.all().stream().map(Lever::name).toList()));
    }

    private static double start(String text, Matcher start) throws Unreadable {
        int hour = start.group("hour") == null ? 0 : Integer.parseInt(start.group("hour"));
        int minute = start.group("minute") == null ? 0 : Integer.parseInt(start.group("minute"));
        if (hour > 23 || minute > 59) {
            throw new Unreadable(text, "the time " + hour + ":" + minute, "a time of day from 00:00 to 23:59", "");
        }
        return Integer.parseInt(start.group("day")) * DAY + hour * 3600 + minute * 60;
    }

    private static double value(String text, String told, Lever lever) throws Unreadable {
        double initial = lever.setting().initial();
        Matcher relative = RELATIVE.matcher(told);
        if (relative.matches() && (lever.kind() == Lever.Kind.FACTOR || lever.kind() == Lever.Kind.AMOUNT)) {
            double share = Double.parseDouble(relative.group("number")) / 100;
            boolean less = !relative.group("sign").equals("+");
            if (less && share > 1) {
                throw new Unreadable(text, "less than nothing", "at most -100 %", "");
            }
            if (initial == 0) {
                throw new Unreadable(text, "a share of something that is 0 in the plan", "an amount with its unit", "");
            }
            if (lever.unit().equals("degC")) {
                throw new Unreadable(text, "a share of a temperature", "a temperature such as 24 °C", "");
            }
            return inRange(text, told, initial * (1 + (less ? -share : share)), range(lever));
        }
        return switch (lever.kind()) {
            case FACTOR -> inRange(text, told, factor(text, told), range(lever));
            case AMOUNT -> inRange(text, told, amount(text, told, lever.unit()), range(lever));
            case SWITCH -> onOff(text, told, "on or off");
            case FLOAT_SWITCH -> told.equalsIgnoreCase("stuck on") ? 2 : onOff(text, told, "on, stuck off or stuck on");
        };
    }

    private static Range range(Lever lever) {
        return lever.kind() == Lever.Kind.FACTOR
                ? new Range(0, MOST_FACTOR, "0 to 10 000 %")
                : Objects.requireNonNull(RANGES.get(lever.unit()), lever.unit());
    }

    private static double inRange(String text, String told, double value, Range range) throws Unreadable {
        if (!(value >= range.least() && value <= range.most())) {
            throw new Unreadable(text, quoted(told), range.words(), "");
        }
        return value;
    }

    private static double factor(String text, String told) throws Unreadable {
        Matcher share = SHARE.matcher(told);
        if (share.matches()) {
            return Double.parseDouble(share.group("number")) / 100;
        }
        if (NUMBER.matcher(told).matches()) {
            return Double.parseDouble(told);
        }
        throw new Unreadable(text, quoted(told), "a change such as +50 % or -30 %, or a share such as 150 %", "");
    }

    private static double amount(String text, String told, String unit) throws Unreadable {
        SiUnit si = SiUnit.of(unit);
        try {
            double value = AmountText.read(told, si).in(unit);
            if (!unit.equals("degC") && value < 0) {
                throw new Unreadable(text, quoted(told), si.quantity() + " that is not negative", "");
            }
            return value;
        } catch (AmountText.Unreadable wrong) {
            throw new Unreadable(text, wrong.found(), wrong.expected(), "");
        }
    }

    private static double onOff(String text, String told, String expected) throws Unreadable {
        return switch (told.toLowerCase(Locale.ROOT)) {
            case "on" -> 1;
            case "off", "stuck off" -> 0;
            default -> throw new Unreadable(text, quoted(told), expected, "");
        };
    }

    private static String quoted(String told) {
        return told.isEmpty() ? "nothing after the lever" : "“" + shorten(told) + "”";
    }

    private static String shorten(String text) {
        return text.length() > 60 ? text.substring(0, 57) + "…" : text;
    }

    private static String example() {
        return "a change such as: feed +50 %";
    }
}
