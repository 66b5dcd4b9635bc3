package org.tidewright.husbandry.livestock;

import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.tidewright.plan.model.Cover;
import org.tidewright.seawater.unit.Unit;

/**
 * What a system offers to animals.
 *
 * @param length of the display inside, along the front
 * @param width front to back
 * @param water of the whole system
 * @param sand depth of the bed, 0 for a bare floor
 * @param rock dry mass
 * @param coolest water as it is kept
 * @param warmest likewise
 * @param age since the water was put in; null where nobody knows
 * @param alkalinitySpread standard deviation of alkalinity over the last 30 days; null where too few tests tell
 * @param meals a day
 */
public record Home(
        @Unit("m") double length,
        @Unit("m") double width,
        @Unit("m") double height,
        @Unit("m^3") double water,
        Cover cover,
        @Unit("m") double sand,
        @Unit("kg") double rock,
        @Unit("degC") double coolest,
        @Unit("degC") double warmest,
        @Nullable @Unit("month") Double age,
        @Nullable @Unit("mol/m^3") Double alkalinitySpread,
        Set<Given> foods,
        @Unit("1/d") double meals) {
    public Home {
        foods = Set.copyOf(foods);
    }

    /** What a keeper feeds. */
    public enum Given {
        DRY,
        FROZEN,
        ALGAE,
        /** Copepods and the like, added or bred. */
        LIVE_PODS,
        /** Three meals a day or more. */
        MANY_SMALL,
        CORAL_FOOD
    }
}
