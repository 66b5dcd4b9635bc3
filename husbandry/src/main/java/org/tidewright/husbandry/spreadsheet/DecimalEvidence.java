package org.tidewright.husbandry.spreadsheet;

import java.util.Optional;
import java.util.regex.Pattern;

/** Which decimal sign a sheet has, from all its numbers together. */
final class DecimalEvidence {
    private static final Pattern ONLY_DIGITS = Pattern.compile("[-+−]?[\\d.,]*\\d[\\d.,]*");

    /** One number in so many may be a slip of the pen. */
    private static final int SLIPS = 50;

    private int points;
    private int commas;
    private int eitherPoint;
    private int eitherComma;

    /** One cell that may be a number. */
    void add(String cell) {
        if (!ONLY_DIGITS.matcher(cell).matches()) {
            return;
        }
        int lastPoint = cell.lastIndexOf('.');
        int lastComma = cell.lastIndexOf(',');
        if (lastPoint >= 0 && lastComma >= 0) {
            count(lastPoint > lastComma);
        } else if (lastPoint >= 0) {
            one(cell, '.', true);
        } else if (lastComma >= 0) {
            one(cell, ',', false);
        }
    }

    private void one(String cell, char sign, boolean point) {
        boolean several = cell.indexOf(sign) != cell.lastIndexOf(sign);
        int after = cell.length() - 1 - cell.lastIndexOf(sign);
        String before = cell.substring(0, cell.indexOf(sign)).replaceFirst("[-+−]", "");
        boolean mayBeThousands = after == 3 && before.matches("[1-9]\\d{0,2}");
        if (several) {
            count(!point);
        } else if (!mayBeThousands) {
            count(point);
        } else if (point) {
            eitherPoint++;
        } else {
            eitherComma++;
        }
    }

    private void count(boolean point) {
        if (point) {
            points++;
        } else {
            commas++;
        }
    }

    /** The sign; without value where the numbers leave it open. */
    Guess<Optional<DecimalSign>> guess(char separator) {
        if (points > SLIPS * commas) {
            return new Guess<>(Optional.of(DecimalSign.POINT), points + " numbers cannot be read otherwise", true);
        } else if (commas > SLIPS * points) {
            return new Guess<>(Optional.of(DecimalSign.COMMA), commas + " numbers cannot be read otherwise", true);
        } else if (points > 0) {
            return new Guess<>(Optional.empty(), points + " numbers have a point, " + commas + " a comma", false);
        } else if (eitherPoint + eitherComma == 0) {
            return new Guess<>(Optional.of(DecimalSign.POINT), "no number has decimals", true);
        } else if (separator == ',' && eitherComma == 0) {
            return new Guess<>(Optional.of(DecimalSign.POINT), "commas stand between the cells", true);
        }
        return new Guess<>(
                Optional.empty(),
                "a number such as " + (eitherPoint > 0 ? "1.350" : "1,350") + " may be 1.35 or a thousand more",
                false);
    }
}
