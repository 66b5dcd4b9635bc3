package org.tidewright.web.page;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import org.jspecify.annotations.Nullable;
import org.tidewright.husbandry.mixing.Given;
import org.tidewright.husbandry.mixing.Origin;

/** The words under a field of the mixing desk: where its number is from, what is wrong with it. */
final class MixingNotes {
    private static final MathContext OF_DOUBT = new MathContext(1);

    private MixingNotes() {}

    /**
     * The note.
     *
     * @param begun whether what was given stands in the field
     * @param unit the field is in
     */
    static String of(@Nullable Given given, boolean begun, FieldUnits.One unit) {
        if (given == null) {
            return "";
        }
        String doubt = doubt(given, unit);
        String detail = given.origin().detail();
        if (begun) {
            return from(given.origin()) + (detail.isEmpty() ? "" : ", " + detail)
                    + (doubt.isEmpty() ? "" : ", " + doubt) + ".";
        }
        double value = unit.written(given.value());
        return "Typed. " + from(given.origin()) + ": " + unit.told(value) + (doubt.isEmpty() ? "" : ", " + doubt)
                + (detail.isEmpty() ? "" : ", " + detail) + ".";
    }

    private static String doubt(Given given, FieldUnits.One unit) {
        if (!(given.standardError() > 0)) {
            return "";
        }
        double size = unit.difference(given.value(), given.standardError());
        return "±\u00a0"
                + new BigDecimal(size).round(OF_DOUBT).stripTrailingZeros().toPlainString();
    }

    private static String from(Origin origin) {
        return switch (origin.basis()) {
            case YOUR_LOG -> "From your log";
            case YOUR_PLAN -> "From your plan";
            case COMPUTED -> "Worked out from your plan";
            case COMMON_PRACTICE -> "Common practice";
            case FROM_MEMORY -> "Usual, from memory";
            case PUBLISHED -> "Published";
        };
    }

    static String outside(double number, FieldUnits units, FieldUnits.One unit, MixingFields.Range range) {
        FieldUnits.One scale = units.reaching(unit, range.least(), range.most());
        String slip = range.slip().isEmpty() ? "Is the unit right?" : range.slip();
        return "Found " + unit.told(number) + "; expected is "
                + FieldUnits.plain(scale.written(range.least()), scale.digits()) + " to "
                + scale.told(scale.written(range.most())) + ". " + slip;
    }

    /** What is wrong with a text that is no number. */
    static String unread(String read, String begins, FieldUnits units) {
        return "Found “" + Entry.shortened(read) + "”; expected is a number such as "
                + (begins.isEmpty() ? "12.5" : begins) + " in " + names(units) + ".";
    }

    private static String names(FieldUnits units) {
        return String.join(", ", units.all().stream().map(FieldUnits.One::label).toList());
    }

    /** A number to begin with: to the last digit that its doubt reaches, where that is told. */
    static String begun(Given given, FieldUnits.One unit) {
        double value = unit.written(given.value());
        double doubt = unit.difference(given.value(), given.standardError());
        if (!(doubt > 0)) {
            return FieldUnits.plain(value, unit.digits());
        }
        // Two digits of a doubt that begins with 1 or 2, as is usual: one would round by a third of it.
        int decimals = (int) -Math.floor(Math.log10(doubt / 3));
        return FieldUnits.plain(
                new BigDecimal(value)
                        .setScale(Math.max(0, decimals), RoundingMode.HALF_EVEN)
                        .doubleValue(),
                unit.digits());
    }
}
