package org.tidewright.plan.fault;

import java.util.Comparator;

/**
 * Something in a plan that must be mended.
 *
 * @param line counted from 1
 * @param column counted from 1
 * @param where path of keys, {@code sump.sections[2].baffle}; empty for the file as a whole
 * @param found what stands there
 * @param expected what should
 * @param mend what to do, empty where the expectation says it all
 */
public record Fault(int line, int column, String where, String found, String expected, String mend) {

    /** The order a reader meets them in. */
    public static final Comparator<Fault> BY_PLACE =
            Comparator.comparingInt(Fault::line).thenComparingInt(Fault::column);

    /** One line for a terminal, without the file's name. */
    public String sentence() {
        StringBuilder text = new StringBuilder();
        if (!where.isEmpty()) {
            text.append(where).append(": ");
        }
        text.append("found ")
                .append(found)
                .append("; expected ")
                .append(expected)
                .append('.');
        if (!mend.isEmpty()) {
            text.append(' ').append(mend);
        }
        return text.toString();
    }
}
