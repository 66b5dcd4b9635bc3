package org.tidewright.husbandry.quantity;

import java.util.Comparator;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.tidewright.husbandry.dosing.DoseAdvice;
import org.tidewright.husbandry.dosing.DoseMoves;
import org.tidewright.husbandry.estimate.Inputs;
import org.tidewright.husbandry.journal.Event;
import org.tidewright.plan.method.WaterQuantity;
import org.tidewright.plan.model.Dosing;
import org.tidewright.plan.model.Plan;
import org.tidewright.plan.model.Salt;
import org.tidewright.seawater.unit.Unit;

/**
 * The dose of a quantity that a keeper would move.
 *
 * @param solution its name, and what it is
 * @param amount as it stands, m³ a day
 * @param effect rise of the level for each m³
 */
record Dosed(
        Dosing solution,
        @Unit("m^3/d") double amount,
        @Unit("*") double effect) {
    private static final double MILLILITRE = 1e-6;
    private static final double DAY = 86_400;

    /** What all programmes bring of a quantity a day, as they stand at a time. */
    static @Unit("*") double of(Inputs inputs, WaterQuantity quantity, @Unit("d") double time) {
        return inputs.solutions().stream()
                .mapToDouble(solution -> solution.effectOn(quantity) * solution.perDay(time))
                .sum();
    }

    /**
     * Of the plan's solutions the one that brings most of the quantity for its volume, limewater last: how much of it can be
     * dosed is set by what evaporates.
     */
    static Optional<Dosed> movable(Plan plan, Inputs inputs, WaterQuantity quantity, @Unit("d") double time) {
        return plan.dosing().stream()
                .flatMap(dosing -> inputs.solutions().stream()
                        .filter(solution -> solution.name().equals(dosing.name()))
                        .filter(solution -> solution.effectOn(quantity) > 0)
                        .map(solution -> new Dosed(dosing, solution.perDay(time), solution.effectOn(quantity))))
                .max(Comparator.comparingDouble(
                        dosed -> dosed.solution().salt() == Salt.CALCIUM_HYDROXIDE ? 0 : dosed.effect()));
    }

    /** What it brings a day. */
    @Unit("*")
    double brings() {
        return amount * effect;
    }

    /** Finest change that can be set: a millilitre a day, a tenth where little is dosed. */
    @Unit("*")
    double step() {
        return (amount < 20 * MILLILITRE ? 0.1 : 1) * MILLILITRE * effect;
    }

    /** The line that the log holds once it is moved as advised; empty where it is not to be moved. */
    Optional<Event.LeverMoved> moved(@Nullable DoseAdvice advice) {
        double brings = advice instanceof DoseAdvice.Move move
                ? move.dose()
                : advice instanceof DoseAdvice.Correct correct ? correct.dose() : brings();
        return Math.abs(brings - brings()) < step() / 2
                ? Optional.empty()
                : Optional.of(new Event.LeverMoved(
                        solution.name() + DoseMoves.DOSE, "m^3/s", amount / DAY, volume(brings) / DAY));
    }

    /** The volume that brings so much of it. */
    @Unit("m^3")
    double volume(@Unit("*") double brings) {
        return brings / effect;
    }
}
