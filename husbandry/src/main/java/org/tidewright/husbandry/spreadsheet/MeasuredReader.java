package org.tidewright.husbandry.spreadsheet;

import static org.tidewright.husbandry.spreadsheet.BadCell.quoted;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import org.tidewright.plan.fault.Fault;
import org.tidewright.plan.fault.Spelling;
import org.tidewright.plan.method.QuantityUnit;
import org.tidewright.plan.method.TestMethod;
import org.tidewright.plan.method.TestMethods;
import org.tidewright.plan.method.WaterQuantity;

/** Reads what a column or a name is, as one entry of a mapping's text has it: {@code alkalinity, dkh, method photometer ?}. */
final class MeasuredReader {
    private static final Pattern PART = Pattern.compile("(?:" + MappingReader.TEXT + "|[^,\"])+");
    private static final String METHOD = "method ";
    private static final String PLACE = "place ";

    private final int line;
    private final String key;
    private final List<Fault> faults;

    /**
     * For one entry.
     *
     * @param line where it stands
     * @param key before its colon
     */
    MeasuredReader(int line, String key, List<Fault> faults) {
        this.line = line;
        this.key = key;
        this.faults = faults;
    }

    /** Empty for what is left out, and after a fault. */
    Optional<Measured> read(String entry) {
        boolean sure = !entry.endsWith("?");
        String value = sure ? entry : entry.substring(0, entry.length() - 1).strip();
        if (value.equals("left out")) {
            return Optional.empty();
        }
        List<String> parts = new ArrayList<>();
        Matcher part = PART.matcher(value);
        while (part.find()) {
            parts.add(part.group().strip());
        }
        WaterQuantity quantity = quantity(parts.isEmpty() ? "" : parts.get(0));
        QuantityUnit unit = quantity == null ? null : unit(quantity, parts.size() < 2 ? "" : parts.get(1));
        return quantity == null || unit == null
                ? Optional.empty()
                : Optional.of(rest(quantity, unit, parts.subList(2, parts.size()), sure));
    }

    private @Nullable WaterQuantity quantity(String name) {
        List<String> keys =
                Arrays.stream(WaterQuantity.values()).map(WaterQuantity::key).toList();
        WaterQuantity quantity = WaterQuantity.ofKey(name).orElse(null);
        if (quantity == null) {
            fault(quoted(name), "“left out” or one of: " + String.join(", ", keys), Spelling.suggestion(name, keys));
        }
        return quantity;
    }

    private @Nullable QuantityUnit unit(WaterQuantity quantity, String name) {
        List<String> keys = quantity.units().stream().map(QuantityUnit::key).toList();
        QuantityUnit unit = quantity.unitOfKey(name).orElse(null);
        if (unit == null) {
            fault(
                    quoted(name) + " as the unit of " + quantity.words(),
                    "one of: " + String.join(", ", keys),
                    Spelling.suggestion(name, keys));
        }
        return unit;
    }

    private Measured rest(WaterQuantity quantity, QuantityUnit unit, List<String> parts, boolean sure) {
        String method = null;
        String place = MeasuredGuess.TANK;
        Kept kept = Kept.BY_PACE;
        for (String part : parts) {
            if (part.startsWith(METHOD)) {
                method = method(quantity, part.substring(METHOD.length()).strip());
            } else if (part.startsWith(PLACE)
                    && part.substring(PLACE.length()).strip().matches(MappingReader.TEXT)) {
                place = MappingReader.bare(part.substring(PLACE.length()).strip());
            } else if (part.equals("as probe") || part.equals("as readings")) {
                kept = part.equals("as probe") ? Kept.PROBE : Kept.READINGS;
            } else {
                fault(quoted(part), "method and its key, place \"…\", as probe, or as readings", "");
            }
        }
        return new Measured(quantity, unit, method, place, kept, sure);
    }

    private @Nullable String method(WaterQuantity quantity, String name) {
        if (TestMethods.find(quantity, name).isPresent()) {
            return name;
        }
        List<String> keys =
                TestMethods.of(quantity).stream().map(TestMethod::key).toList();
        fault(
                quoted(name) + " as a method for " + quantity.words(),
                "one of: " + String.join(", ", keys),
                Spelling.suggestion(name, keys));
        return null;
    }

    private void fault(String found, String expected, String mend) {
        faults.add(new Fault(line, 1, key, found, expected, mend));
    }
}
