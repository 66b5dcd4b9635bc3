package org.tidewright.testkit;

import org.tidewright.testkit.ReferenceTable.Row;

/**
 * Fails a test whose number lies further from a reference value than its tolerance, and says all one needs to judge it:
 * file, line, column, expected, got, error, tolerance. NaN is never close.
 */
public final class Close {
    private Close() {}

    /** |got - expected| must not exceed {@code tolerance}, in the unit of the column. */
    public static void absolute(Row row, String column, double got, double tolerance) {
        check(row, column, got, absoluteError(row, column, got), tolerance, "absolute");
    }

    /** |got - expected| must not exceed {@code tolerance} times |expected|; an expected zero must be met exactly. */
    public static void relative(Row row, String column, double got, double tolerance) {
        check(row, column, got, relativeError(row, column, got), tolerance, "relative");
    }

    static double absoluteError(Row row, String column, double got) {
        return Math.abs(got - row.number(column));
    }

    static double relativeError(Row row, String column, double got) {
        double expected = row.number(column);
        return got == expected ? 0 : Math.abs(got - expected) / Math.abs(expected);
    }

    private static void check(Row row, String column, double got, double error, double tolerance, String kind) {
        if (!(tolerance >= 0 && tolerance < Double.POSITIVE_INFINITY)) {
            throw new IllegalArgumentException("tolerance " + tolerance + " is not a finite number from 0 up");
        }
        if (!(error <= tolerance)) {
            throw new AssertionError(row.where(column) + ": expected " + row.number(column) + ", got " + got + ", "
                    + kind + " error " + error + " exceeds " + tolerance + "\n  row: " + row);
        }
    }
}
