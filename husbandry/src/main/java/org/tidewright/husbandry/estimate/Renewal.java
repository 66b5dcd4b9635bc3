package org.tidewright.husbandry.estimate;

import java.util.Map;
import org.tidewright.plan.method.WaterQuantity;
import org.tidewright.seawater.unit.Unit;

/**
 * A part of the water that is taken out and replaced at once.
 *
 * @param share of the system's water
 * @param newWater what is known of what comes in; what is not named stays as it is
 */
public record Renewal(@Unit("d") double time, @Unit("1") double share, Map<WaterQuantity, Known> newWater) {
    public Renewal {
        if (!(share > 0 && share <= 1)) {
            throw new IllegalArgumentException(
                    "a share of " + share + " cannot be changed; it must be above 0, at most 1");
        }
        newWater = Map.copyOf(newWater);
    }
}
