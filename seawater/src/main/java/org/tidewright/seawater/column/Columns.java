package org.tidewright.seawater.column;

import java.util.function.DoubleUnaryOperator;
import org.tidewright.seawater.unit.Unit;

/**
 * Computes a law for every point of a column. Nothing is allocated for a point, so a column may be as long as memory
 * holds. What the law refuses at one point, NaN among it, is refused with the point's index, counted from 0; the points
 * before it are filled then.
 */
public final class Columns {
    private Columns() {}

    /**
     * Fills a column with a law of two columns.
     *
     * @param law of the two numbers of a point
     * @param first the law's first argument at each point
     * @param second the law's second argument at each point, as many
     * @param out takes the values, as many; may be one of the other two
     */
    public static void fill(Law law, @Unit("*") double[] first, @Unit("*") double[] second, @Unit("*") double[] out) {
        sameLength("second column", second.length, first.length);
        sameLength("column to fill", out.length, first.length);
        int point = 0;
        try {
            for (; point < first.length; point++) {
                out[point] = law.of(first[point], second[point]);
            }
        } catch (IllegalArgumentException refused) {
            throw at(point, refused);
        }
    }

    /**
     * Fills a column with a law of one column.
     *
     * @param law of the number of a point
     * @param values the law's argument at each point
     * @param out takes the values, as many; may be the same array
     */
    public static void fill(DoubleUnaryOperator law, @Unit("*") double[] values, @Unit("*") double[] out) {
        sameLength("column to fill", out.length, values.length);
        int point = 0;
        try {
            for (; point < values.length; point++) {
                out[point] = law.applyAsDouble(values[point]);
            }
        } catch (IllegalArgumentException refused) {
            throw at(point, refused);
        }
    }

    private static void sameLength(String which, int length, int expected) {
        if (length != expected) {
            throw new IllegalArgumentException(
                    "the " + which + " has " + length + " points; the first has " + expected);
        }
    }

    private static IllegalArgumentException at(int point, IllegalArgumentException refused) {
        return new IllegalArgumentException("point " + point + ": " + refused.getMessage(), refused);
    }
}
