package org.tidewright.seawater.column;

import org.tidewright.seawater.unit.Unit;

/** A law of two numbers, most often temperature and practical salinity in this order. */
@FunctionalInterface
public interface Law {
    /**
     * The law's value.
     *
     * @param first in the unit the law takes
     * @param second in the unit the law takes
     * @return in the unit the law gives
     */
    @Unit("*")
    double of(@Unit("*") double first, @Unit("*") double second);
}
