package org.tidewright.husbandry.quantity;

import java.util.Optional;
import org.tidewright.husbandry.estimate.Estimate;
import org.tidewright.plan.method.WaterQuantity;
import org.tidewright.plan.model.Plan;
import org.tidewright.seawater.unit.Unit;

/**
 * The dose of calcium that goes with a move of alkalinity: skeletons take both in one ratio.
 *
 * @param dosed the calcium's dose as it stands
 * @param amount to which it goes, m³ a day
 */
record Companion(Dosed dosed, @Unit("m^3/d") double amount) {

    /**
     * Of a move of alkalinity; empty where no solution of its own brings calcium, or where it would move by less than can be set.
     *
     * @param solution that is moved
     * @param more alkalinity a day than before
     */
    static Optional<Companion> of(
            Plan plan, Estimate estimate, String solution, @Unit("mol/(m^3 d)") double more, @Unit("d") double time) {
        return Dosed.movable(plan, estimate, WaterQuantity.CALCIUM, time)
                .filter(dosed -> !dosed.solution().name().equals(solution))
                .flatMap(dosed -> moved(dosed, more * estimate.inputs().calciumForAlkalinity()));
    }

    private static Optional<Companion> moved(Dosed dosed, double more) {
        double step = dosed.step();
        double brings = Math.max(0, Math.rint((dosed.brings() + more) / step) * step);
        return Math.abs(brings - dosed.brings()) < step / 2
                ? Optional.empty()
                : Optional.of(new Companion(dosed, dosed.volume(brings)));
    }
}
