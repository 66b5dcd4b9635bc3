package org.tidewright.husbandry.mixing;

import org.tidewright.seawater.range.Bounds;
import org.tidewright.seawater.unit.Unit;

/**
 * A number to begin with, in its coherent unit.
 *
 * @param standardError 0 where none was stated
 */
public record Given(@Unit("*") double value, @Unit("*") double standardError, Origin origin) {
    public Given {
        Bounds.finite(value, "1", "a number to begin with");
        Bounds.notNegative(standardError, "1", "its standard error");
    }
}
