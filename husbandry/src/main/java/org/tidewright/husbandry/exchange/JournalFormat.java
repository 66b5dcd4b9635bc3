package org.tidewright.husbandry.exchange;

import java.util.Locale;
import org.tidewright.husbandry.journal.Kind;
import org.tidewright.plan.method.WaterQuantity;
import tools.jackson.core.io.NumberOutput;

/** What both formats have in common. */
public final class JournalFormat {
    /** By this a copy is known. */
    public static final String NAME = "tidewright-journal";

    /** Raised when a name changes its meaning or a new one must not be passed over; older copies stay readable. */
    public static final int VERSION = 2;

    static final String REMARK = "remark";
    static final String STRUCK = "struck";
    static final String WRITTEN_AT = "written_at";

    private JournalFormat() {}

    static boolean isRead(int version) {
        return version >= 1 && version <= VERSION;
    }

    /** The first version that has lines of a kind. */
    static int since(Kind kind) {
        return switch (kind) {
            case ANIMAL_CHECK, TREATMENT, FALLOW -> 2;
            default -> 1;
        };
    }

    /** How the coherent unit of a quantity ends a name: {@code temperature_c}. */
    static String heldUnit(WaterQuantity quantity) {
        return switch (quantity.held()) {
            case "degC" -> "c";
            case "mol/m^3" -> "mol_per_m3";
            case "kg/m^3" -> "kg_per_m3";
            // A scale: its plain number is the first of its units.
            case "1" -> quantity.units().get(0).key();
            default -> throw new IllegalStateException("no name ends in " + quantity.held());
        };
    }

    /** The shortest digits that read back as the same double, alike on every Java. */
    static String number(double number) {
        return NumberOutput.toString(number, true);
    }

    /** Half of a surrogate pair has no place in UTF-8; the replacement character stands for it. */
    static String wellFormed(String text) {
        boolean sound = text.codePoints().noneMatch(JournalFormat::isHalf);
        return sound
                ? text
                : text.codePoints()
                        .map(point -> isHalf(point) ? 0xFFFD : point)
                        .collect(StringBuilder::new, StringBuilder::appendCodePoint, StringBuilder::append)
                        .toString();
    }

    private static boolean isHalf(int codePoint) {
        return codePoint >= Character.MIN_SURROGATE && codePoint <= Character.MAX_SURROGATE;
    }

    static String key(Enum<?> constant) {
        return constant.name().toLowerCase(Locale.ROOT);
    }

    /** Name of the CSV file that holds a kind. */
    static String file(Kind kind) {
        return switch (kind) {
            case READING -> "readings.csv";
            case METHOD_CHECK -> "method_checks.csv";
            case DOSE -> "doses.csv";
            case WATER_CHANGE -> "water_changes.csv";
            case FEEDING -> "feedings.csv";
            case ANIMAL -> "animals.csv";
            case WORK -> "work.csv";
            case OBSERVATION -> "observations.csv";
            case LEVER -> "levers.csv";
            case ANIMAL_CHECK -> "animal_checks.csv";
            case TREATMENT -> "treatments.csv";
            case FALLOW -> "fallows.csv";
        };
    }
}
