package org.tidewright.husbandry.quantity;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.tidewright.husbandry.advice.Figure;
import org.tidewright.husbandry.advice.Measure;
import org.tidewright.husbandry.dosing.DoseAdvice;
import org.tidewright.husbandry.estimate.Estimate;
import org.tidewright.husbandry.estimate.Solution;
import org.tidewright.husbandry.journal.Event;
import org.tidewright.husbandry.water.SystemWater;
import org.tidewright.plan.method.WaterQuantity;
import org.tidewright.plan.model.Plan;
import org.tidewright.plan.model.Salt;
import org.tidewright.seawater.unit.Unit;

/**
 * The dose of a quantity that a keeper would move.
 *
 * @param means of what kind it is
 * @param solution what it is, in the inputs
 * @param salt that is dissolved; null for a reactor
 * @param amount as it stands, m³ a day
 * @param effect rise of the level for each m³, by the strength that the journal taught
 * @param most of it that may be dosed, m³ a day: of limewater no more than evaporates, or the water rises
 */
record Dosed(
        Means means,
        Solution solution,
        @Nullable Salt salt,
        @Unit("m^3/d") double amount,
        @Unit("*") double effect,
        @Unit("m^3/d") double most) {
    private static final double MILLILITRE = 1e-6;

    /** What evaporates is not known to this share of it; this project's own. */
    private static final double EVAPORATION_KNOWN = 0.03;

    private static final double DAY = 86_400;

    /** What is moved, from the last choice to the first. How much limewater can be dosed is set by what evaporates. */
    enum Means {
        LIMEWATER,
        REACTOR,
        SOLUTION
    }

    /**
     * Of the plan's solutions the one that brings most of the quantity for its volume; else its reactor, else limewater. What
     * brings alkalinity is moved for alkalinity alone: else two quantities would pull at one lever.
     */
    static Optional<Dosed> movable(Plan plan, Estimate estimate, WaterQuantity quantity, @Unit("d") double time) {
        List<Solution> known = estimate.inputs().solutions().stream()
                .filter(solution -> solution.effectOn(quantity) > 0)
                .filter(solution ->
                        quantity == WaterQuantity.ALKALINITY || solution.effectOn(WaterQuantity.ALKALINITY) == 0)
                .toList();
        Stream<Dosed> solutions = plan.dosing().stream()
                .flatMap(dosing -> named(known, dosing.name()).map(solution -> {
                    boolean limewater = dosing.salt() == Salt.CALCIUM_HYDROXIDE;
                    return new Dosed(
                            limewater ? Means.LIMEWATER : Means.SOLUTION,
                            solution,
                            dosing.salt(),
                            solution.perDay(time),
                            effect(estimate, solution, quantity, time),
                            limewater ? SystemWater.evaporation(plan) * DAY : Double.POSITIVE_INFINITY);
                }));
        Stream<Dosed> reactors = plan.gear().stream()
                .filter(gear -> gear.reactor() != null)
                .flatMap(gear -> named(known, gear.name())
                        .map(solution -> new Dosed(
                                Means.REACTOR,
                                solution,
                                null,
                                solution.perDay(time),
                                effect(estimate, solution, quantity, time),
                                Double.POSITIVE_INFINITY)));
        return Stream.concat(solutions, reactors)
                .max(Comparator.comparing(Dosed::means).thenComparingDouble(Dosed::effect));
    }

    private static Stream<Solution> named(List<Solution> solutions, String name) {
        return solutions.stream().filter(solution -> solution.name().equals(name));
    }

    private static double effect(Estimate estimate, Solution solution, WaterQuantity quantity, double time) {
        return solution.effectOn(quantity) * estimate.strength(solution, time).value();
    }

    /** As sentences call what is set from one amount to another: {@code bicarbonate}, {@code the effluent of the reactor}. */
    String words() {
        return means == Means.REACTOR ? doseWords() : solution.name();
    }

    /** As sentences call what is left alone: {@code the dose of bicarbonate}. */
    String doseWords() {
        return (means == Means.REACTOR ? "the effluent of " : "the dose of ") + solution.name();
    }

    /** Whether a portion of it can be given by hand: limewater would lift the pH, and a reactor gives none. */
    boolean isGivenByHand() {
        return means == Means.SOLUTION;
    }

    /** An amount a day of it, as it is measured out. */
    Figure figure(@Unit("m^3/d") double amount) {
        Measure measure = switch (means) {
            case REACTOR -> Measure.DRIP;
            case LIMEWATER -> Measure.LARGE_DOSE_A_DAY;
            case SOLUTION -> Measure.DOSE_A_DAY;
        };
        return Figure.exact(measure, amount);
    }

    /** What it brings a day. */
    @Unit("*")
    double brings() {
        return amount * effect;
    }

    /** Whether no more of it can be dosed. */
    boolean isFull() {
        return amount > (1 - EVAPORATION_KNOWN) * most;
    }

    /** Finest change that can be set: a millilitre a day, a tenth where little is dosed, a hundredth of a reactor's. */
    @Unit("*")
    double step() {
        double finest = means == Means.REACTOR ? amount / 100 : (amount < 20 * MILLILITRE ? 0.1 : 1) * MILLILITRE;
        return finest * effect;
    }

    /** The line that the log holds once it is moved as advised; empty where it is not to be moved. */
    Optional<Event.LeverMoved> moved(@Nullable DoseAdvice advice) {
        double brings = advice instanceof DoseAdvice.Move move
                ? move.dose()
                : advice instanceof DoseAdvice.Correct correct ? correct.dose() : brings();
        return Math.abs(brings - brings()) < step() / 2
                ? Optional.empty()
                : Optional.of(new Event.LeverMoved(solution.lever(), "m^3/s", amount / DAY, volume(brings) / DAY));
    }

    /** The volume that brings so much of it. */
    @Unit("m^3")
    double volume(@Unit("*") double brings) {
        return brings / effect;
    }
}
