package org.tidewright.husbandry.spreadsheet;

import static org.tidewright.husbandry.spreadsheet.BadCell.quoted;

import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.tidewright.seawater.unit.Unit;

/**
 * A number as it stands in a cell, perhaps with its unit.
 *
 * @param digits as {@link java.math.BigDecimal} reads them
 * @param unit what stands behind the number, empty for nothing
 */
record CellNumber(String digits, String unit) {
    private static final int LONGEST = 60;

    /** What keepers write where nothing was measured. */
    private static final Set<String> NOTHING =
            Set.of("", "-", "--", "–", "—", "n/a", "na", "#n/a", "nan", "null", "none");

    /** What keepers write where a test showed nothing. */
    private static final Set<String> TOO_LITTLE = Set.of("nd", "n.d.", "bdl", "trace", "undetectable", "lo", "low");

    private static final Pattern BOUND = Pattern.compile("[<>≤≥~≈].*");
    private static final Pattern NUMBER = Pattern.compile(
            "([-+−]?)((?:\\d[\\d.,'’\\u00A0\\u202F]*|[.,]\\d+)(?:[eE][-+]?\\d{1,3})?)\\s*(\\D.*)?", Pattern.DOTALL);
    private static final Pattern BETWEEN_THOUSANDS = Pattern.compile("['’\\u00A0\\u202F](?=\\d{3}(?!\\d))");
    private static final Pattern PLAIN = Pattern.compile("(?:\\d+\\.?\\d*|\\.\\d+)(?:[eE][-+]?\\d{1,3})?");

    static boolean isNothing(String cell) {
        return NOTHING.contains(cell.toLowerCase(Locale.ROOT));
    }

    /** Whether a cell begins as a number does, whichever its decimal sign. */
    static boolean looksLikeOne(String cell) {
        return cell.length() <= LONGEST && NUMBER.matcher(cell).matches();
    }

    @Unit("*")
    double value() {
        return Double.parseDouble(digits);
    }

    /** For guesses; the preview tells the others with their lines. */
    static Optional<CellNumber> ifReadable(String cell, DecimalSign decimal) {
        try {
            return Optional.of(read(cell, decimal));
        } catch (BadCell other) {
            return Optional.empty();
        }
    }

    /** Reads a cell that is not empty. */
    static CellNumber read(String cell, DecimalSign decimal) throws BadCell {
        String example = "a number such as 8" + decimal.sign() + "1";
        if (cell.length() > LONGEST) {
            throw new BadCell("a text of " + cell.length() + " characters", example, "");
        } else if (BOUND.matcher(cell).matches() || TOO_LITTLE.contains(cell.toLowerCase(Locale.ROOT))) {
            throw new BadCell(
                    quoted(cell) + ", a bound and no value",
                    example,
                    "Write the number that the test showed, or leave the cell empty.");
        }
        Matcher number = NUMBER.matcher(cell);
        if (!number.matches()) {
            throw new BadCell(quoted(cell), example, "");
        }
        String sign = number.group(1).isEmpty() || number.group(1).equals("+") ? "" : "-";
        String digits = plain(cell, number.group(2), decimal);
        String unit = number.group(3) == null ? "" : number.group(3).strip();
        if (Double.isInfinite(Double.parseDouble(digits))) {
            throw new BadCell(quoted(cell), example, "");
        }
        return new CellNumber(sign + digits, unit);
    }

    private static String plain(String cell, String written, DecimalSign decimal) throws BadCell {
        String together = BETWEEN_THOUSANDS.matcher(written).replaceAll("");
        if (together.indexOf(decimal.thousands()) >= 0) {
            String group = Pattern.quote(String.valueOf(decimal.thousands()));
            String rest = Pattern.quote(String.valueOf(decimal.sign()));
            if (!together.matches("[1-9]\\d{0,2}(?:" + group + "\\d{3})+(?:" + rest + "\\d*)?")) {
                throw new BadCell(
                        quoted(cell),
                        "a number with a decimal " + (decimal == DecimalSign.POINT ? "point" : "comma")
                                + ", as in the rest of the sheet",
                        "");
            }
            together = together.replace(String.valueOf(decimal.thousands()), "");
        }
        String plain = together.replace(decimal.sign(), '.');
        if (!PLAIN.matcher(plain).matches()) {
            throw new BadCell(quoted(cell), "a number such as 8" + decimal.sign() + "1", "");
        }
        return plain;
    }
}
