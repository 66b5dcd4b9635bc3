package org.tidewright.husbandry.burden;

import java.util.List;
import java.util.Locale;
import org.tidewright.husbandry.advice.Figure;
import org.tidewright.husbandry.advice.Measure;
import org.tidewright.husbandry.limit.TargetRange;
import org.tidewright.plan.method.WaterQuantity;
import org.tidewright.seawater.unit.Unit;
import org.tidewright.twin.forecast.Outlook.Range;

/**
 * What the food of animals that are to come makes of nitrate or phosphate in twelve weeks.
 *
 * @param held between which it is held
 * @param young with them as they come
 * @param grown with them grown
 * @param tellable what usual tests can tell apart
 */
public record Nutrient(
        WaterQuantity quantity,
        Measure measure,
        TargetRange held,
        Compared young,
        Compared grown,
        @Unit("mg/L") double tellable) {
    /** What usual tests can tell apart, mg/L; common practice. */
    private static final double NITRATE_TELLABLE = 2;

    private static final double PHOSPHATE_TELLABLE = 0.03;

    /** Nitrate and phosphate. */
    public static List<Nutrient> of(Burden burden) {
        return List.of(
                new Nutrient(
                        WaterQuantity.NITRATE,
                        Measure.CONCENTRATION,
                        held(burden, WaterQuantity.NITRATE),
                        burden.nitrate(),
                        burden.grown().nitrate(),
                        NITRATE_TELLABLE),
                new Nutrient(
                        WaterQuantity.PHOSPHATE,
                        Measure.TRACE,
                        held(burden, WaterQuantity.PHOSPHATE),
                        burden.phosphate(),
                        burden.grown().phosphate(),
                        PHOSPHATE_TELLABLE));
    }

    private static TargetRange held(Burden burden, WaterQuantity quantity) {
        return TargetRange.of(burden.plan(), quantity).orElseThrow();
    }

    public String name() {
        return quantity.toString().toLowerCase(Locale.ROOT);
    }

    /** Whether it leaves its range for their sake, by the middle of the draws. */
    public boolean leaves(Compared told) {
        return told.with().middle() > 1e3 * held.most() && told.more().middle() >= tellable;
    }

    /** Whether it does so in nearly every draw, and would hardly have without them. */
    public boolean surelyLeaves() {
        return leaves(young)
                && young.with().low() > 1e3 * held.most()
                && young.without().middle() <= 1e3 * held.most();
    }

    public Figure figure(Range range) {
        return Figure.between(measure, range.middle() / 1e3, range.low() / 1e3, range.high() / 1e3);
    }

    /** The most that is wanted of it. */
    public Figure most() {
        return Figure.exact(measure, held.most());
    }
}
