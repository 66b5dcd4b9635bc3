package org.tidewright.husbandry.spreadsheet;

import org.jspecify.annotations.Nullable;
import org.tidewright.plan.method.QuantityUnit;
import org.tidewright.plan.method.WaterQuantity;

/**
 * What the numbers of a column, or those beside a name, are.
 *
 * @param unit where the cell says none itself
 * @param method key of how they were measured; null where that is not known
 * @param place of the probe, as the keeper calls it
 * @param sure whether the keeper has nothing to confirm
 */
public record Measured(
        WaterQuantity quantity, QuantityUnit unit, @Nullable String method, String place, Kept kept, boolean sure) {

    Measured confirmed() {
        return new Measured(quantity, unit, method, place, kept, true);
    }
}
