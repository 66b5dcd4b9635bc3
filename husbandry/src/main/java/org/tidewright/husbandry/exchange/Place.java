package org.tidewright.husbandry.exchange;

import org.tidewright.plan.fault.Fault;

/**
 * Where in a copy something stands.
 *
 * @param line counted from 1
 * @param column counted from 1; in CSV the number of the cell
 * @param where in the words of the format: {@code lines[3].unit}
 */
record Place(int line, int column, String where) {
    Fault fault(String found, String expected, String mend) {
        return new Fault(line, column, where, found, expected, mend);
    }
}
