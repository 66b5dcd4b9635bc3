package org.tidewright.husbandry.quantity;

import org.tidewright.husbandry.advice.Figure;
import org.tidewright.husbandry.advice.Measure;
import org.tidewright.husbandry.estimate.Known;
import org.tidewright.plan.method.WaterQuantity;
import org.tidewright.seawater.unit.Unit;

/** Quantities as figures, in the units their readers know. */
public final class Told {
    private Told() {}

    /** How a level is told. */
    public static Measure level(WaterQuantity quantity) {
        return switch (quantity) {
            case TEMPERATURE -> Measure.TEMPERATURE;
            case SALINITY -> Measure.SALINITY;
            case ALKALINITY -> Measure.ALKALINITY;
            case CALCIUM, MAGNESIUM, NITRATE, OXYGEN -> Measure.CONCENTRATION;
            case PH -> Measure.PH;
            case NITRITE, AMMONIA, PHOSPHATE -> Measure.TRACE;
        };
    }

    /** How a use a day is told. */
    public static Measure use(WaterQuantity quantity) {
        return switch (quantity) {
            case ALKALINITY -> Measure.ALKALINITY_A_DAY;
            case CALCIUM, MAGNESIUM, NITRATE, OXYGEN, NITRITE, AMMONIA, PHOSPHATE -> Measure.CONCENTRATION_A_DAY;
            case TEMPERATURE -> Measure.TEMPERATURE_DIFFERENCE;
            case SALINITY, PH -> Measure.NUMBER;
        };
    }

    public static Figure level(WaterQuantity quantity, Known known) {
        return Figure.about(level(quantity), known.value(), known.standardError());
    }

    public static Figure level(WaterQuantity quantity, @Unit("*") double exact) {
        return Figure.exact(level(quantity), exact);
    }

    public static Figure use(WaterQuantity quantity, Known known) {
        return Figure.about(use(quantity), known.value(), known.standardError());
    }

    public static Figure use(WaterQuantity quantity, @Unit("*") double exact) {
        return Figure.exact(use(quantity), exact);
    }
}
