package org.tidewright.husbandry.sheet;

import static org.tidewright.husbandry.sheet.SpeltUnit.Needs.NOTHING;
import static org.tidewright.husbandry.sheet.SpeltUnit.Needs.TEMPERATURE_AND_SALINITY;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.tidewright.plan.fault.Spelling;
import org.tidewright.seawater.carbonate.BoronRatio;

/**
 * What a keeper typed about a water, read.
 *
 * @param given numbers in the units of their columns
 * @param calcium as measured, mol/kg; null where none was typed
 * @param faults what could not be read; where there are any, nothing should be computed
 */
public record KnownText(
        Map<SheetColumn, Double> given, @Nullable Double calcium, List<Fault> faults) {
    private static final Pattern AMOUNT =
            Pattern.compile("(?<number>[-+]?(?:\\d+(?:\\.\\d*)?|\\.\\d+)(?:[eE][-+]?\\d+)?)\\s*(?<unit>.*)");
    private static final Pattern DECIMAL_COMMA = Pattern.compile("[-+]?\\d+,\\d+.*");

    /** Longer text is no amount. */
    private static final int LONGEST = 60;

    /**
     * Something typed that cannot be meant.
     *
     * @param words what was found, what is expected; to follow the field's own words and a colon
     */
    public record Fault(KnownField field, String words) {}

    /** Reads every field typed; blank ones are not known. */
    public static KnownText read(Map<KnownField, String> typed) {
        Map<SheetColumn, Double> given = new EnumMap<>(SheetColumn.class);
        List<Fault> faults = new ArrayList<>();
        Surroundings around = new Surroundings();
        // In the order of the fields: the later ones are told per kilogram with the earlier ones' help.
        for (KnownField field : KnownField.values()) {
            String text = typed.getOrDefault(field, "").strip();
            if (!text.isEmpty()) {
                try {
                    double value = column(field, text, around);
                    given.put(field.column(), value);
                    around.found(field, value);
                } catch (IllegalArgumentException refused) {
                    faults.add(new Fault(field, String.valueOf(refused.getMessage())));
                    around.faulty(field);
                }
            }
        }
        Double calcium = given.remove(SheetColumn.TOTAL_CALCIUM);
        return new KnownText(given, calcium == null ? null : calcium * 1e-6, List.copyOf(faults));
    }

    /** Temperature and salinity as far as they are known; stand-ins for faulty ones, so that no other field is blamed. */
    private static final class Surroundings {
        private double temperature = Double.NaN;
        private double salinity = Double.NaN;

        void found(KnownField field, double value) {
            if (field == KnownField.TEMPERATURE) {
                temperature = value;
            } else if (field == KnownField.SALINITY) {
                salinity = value;
            }
        }

        void faulty(KnownField field) {
            found(field, field == KnownField.TEMPERATURE ? 25 : 35);
        }
    }

    /** The sheet of what was typed, computed. */
    public WaterSheet sheet(BoronRatio boron) {
        return WaterSheet.of(given, boron, calcium);
    }

    private static double column(KnownField field, String text, Surroundings around) {
        if (text.length() > LONGEST) {
            throw refusal("a text of " + text.length() + " characters", field, "");
        }
        if (DECIMAL_COMMA.matcher(text).matches()) {
            throw new IllegalArgumentException(
                    "“" + text + "” has a comma; write the decimal point: " + text.replaceFirst(",", "."));
        }
        Matcher amount = AMOUNT.matcher(text);
        if (!amount.matches()) {
            throw refusal("“" + text + "”", field, "");
        }
        String spelling = amount.group("unit").strip();
        SpeltUnit unit = unit(field, spelling)
                .orElseThrow(() -> refusal(
                        spelling.isEmpty()
                                ? "“" + text + "” without a unit"
                                : "“" + spelling + "”, which is no unit of it",
                        field,
                        Spelling.suggestion(spelling, spellings(field))));
        if (unit.needs() != NOTHING && Double.isNaN(around.temperature)) {
            throw new IllegalArgumentException("“" + text + "” also needs the temperature");
        }
        if (unit.needs() == TEMPERATURE_AND_SALINITY && Double.isNaN(around.salinity)) {
            throw new IllegalArgumentException("“" + text + "” also needs the salinity");
        }
        double value = converted(unit, amount.group("number"), text, around);
        if (!field.canBeMeant(value)) {
            String inUnit = field.column().unit().isEmpty()
                    ? ""
                    : "\u00a0" + field.column().unit();
            throw new IllegalArgumentException("this would be " + SheetText.plain(value) + inUnit + ", outside "
                    + SheetText.plain(field.least()) + " to " + SheetText.plain(field.most()) + ". Is the unit right?");
        }
        return value;
    }

    private static double converted(SpeltUnit unit, String number, String text, Surroundings around) {
        try {
            return unit.conversion().toColumn(Double.parseDouble(number), around.temperature, around.salinity);
        } catch (IllegalArgumentException refusedByLaw) {
            // The law says so in numbers nobody typed.
            throw new IllegalArgumentException("no seawater has “" + text + "”. Is the unit right?", refusedByLaw);
        }
    }

    private static Optional<SpeltUnit> unit(KnownField field, String spelling) {
        return field.units().stream()
                .filter(unit -> unit.spellings().stream().anyMatch(spelling::equalsIgnoreCase))
                .findFirst();
    }

    private static List<String> spellings(KnownField field) {
        return field.units().stream()
                .flatMap(unit -> unit.spellings().stream())
                .filter(spelling -> !spelling.isEmpty())
                .toList();
    }

    private static IllegalArgumentException refusal(String found, KnownField field, String suggestion) {
        String units = field.unitNames().stream()
                .map(unit -> unit.isEmpty() ? "no unit" : unit)
                .collect(Collectors.joining(", "));
        return new IllegalArgumentException("found " + found + "; expected a number with one of: " + units
                + ". For example " + field.example() + (suggestion.isEmpty() ? "" : ". " + suggestion));
    }
}
