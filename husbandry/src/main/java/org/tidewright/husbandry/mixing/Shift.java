package org.tidewright.husbandry.mixing;

import java.util.List;
import org.tidewright.husbandry.limit.Keeping;
import org.tidewright.husbandry.limit.SafeRate;
import org.tidewright.plan.method.WaterQuantity;
import org.tidewright.seawater.unit.Unit;

/** How far a quantity is moved at once. */
public record Shift(
        WaterQuantity quantity,
        @Unit("*") double before,
        @Unit("*") double after) {
    /** How a step is borne, worse and worse. */
    public enum Pace {
        /** Practice has no rate for it. */
        WITHOUT_RULE,
        /** No faster than asks for no thought. */
        COMFORTABLE,
        /** Faster, and not beyond the ceiling. */
        BRISK,
        /** Beyond the ceiling. */
        SHOCK
    }

    /** Up or down. */
    public @Unit("*") double step() {
        return after - before;
    }

    /** The rates it is judged by. */
    public List<SafeRate> rates(Keeping keeping) {
        return SafeRate.of(quantity, keeping, before, after > before);
    }

    /** Judged by the strictest of its rates. */
    public Pace pace(Keeping keeping) {
        List<SafeRate> rates = rates(keeping);
        if (rates.isEmpty()) {
            return Pace.WITHOUT_RULE;
        } else if (rates.stream().anyMatch(rate -> rate.isPassedBy(step()))) {
            return Pace.SHOCK;
        }
        return rates.stream().allMatch(rate -> rate.isComfortable(step())) ? Pace.COMFORTABLE : Pace.BRISK;
    }
}
