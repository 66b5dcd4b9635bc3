package org.tidewright.husbandry.limit;

import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.tidewright.plan.method.WaterQuantity;
import org.tidewright.plan.model.Plan;
import org.tidewright.plan.model.Targets;
import org.tidewright.plan.quantity.Amount;
import org.tidewright.plan.source.Basis;
import org.tidewright.seawater.unit.Unit;

/**
 * Between which values a quantity is to be held, in its coherent unit.
 *
 * @param basis the plan's own word, or common practice
 * @param detail whose range it is, in words
 */
public record TargetRange(
        WaterQuantity quantity,
        @Unit("*") double least,
        @Unit("*") double most,
        Basis basis,
        String detail) {

    /** What is to be held in a system; empty for a quantity that nobody holds within a range. */
    public static Optional<TargetRange> of(Plan plan, WaterQuantity quantity) {
        Keeping keeping = Keeping.of(plan);
        double[] customary = customary(quantity, keeping);
        Targets targets = plan.targets();
        Amount from = targets == null ? null : from(targets, quantity);
        Amount to = targets == null ? null : to(targets, quantity);
        if (from == null && to == null && customary.length == 0) {
            return Optional.empty();
        }
        double least = from == null ? held(quantity, customary[0]) : from.in(quantity.held());
        double most = to == null ? held(quantity, customary[1]) : to.in(quantity.held());
        return Optional.of(
                from == null && to == null
                        ? new TargetRange(
                                quantity,
                                least,
                                most,
                                Basis.COMMON_PRACTICE,
                                "where keepers hold it for " + keeping.words())
                        : new TargetRange(
                                quantity,
                                Math.min(least, most),
                                Math.max(least, most),
                                Basis.YOUR_PLAN,
                                "your targets"));
    }

    /** Where to hold it: what the plan says of its water if that lies within, else the middle. */
    public @Unit("*") double aim(Plan plan) {
        Amount stated = stated(plan, quantity);
        double middle = (least + most) / 2;
        if (stated == null) {
            return middle;
        }
        double kept = stated.in(quantity.held());
        return kept >= least && kept <= most ? kept : middle;
    }

    public boolean holds(@Unit("*") double value) {
        return value >= least && value <= most;
    }

    private static double held(WaterQuantity quantity, double inUsualUnit) {
        return quantity.units().get(0).toHeld(inUsualUnit);
    }

    /** Least and greatest in the quantity's usual unit. Common practice, all of it. */
    private static double[] customary(WaterQuantity quantity, Keeping keeping) {
        return switch (quantity) {
            case TEMPERATURE ->
                switch (keeping) {
                    case FISH -> range(23, 27);
                    case SOFT_CORALS -> range(24, 27);
                    case LARGE_POLYPS -> range(24.5, 27);
                    case SMALL_POLYPS -> range(25, 27);
                };
            case SALINITY ->
                switch (keeping) {
                    case FISH -> range(30, 35);
                    case SOFT_CORALS -> range(33, 36);
                    case LARGE_POLYPS, SMALL_POLYPS -> range(34, 36);
                };
            case ALKALINITY ->
                switch (keeping) {
                    case FISH, SOFT_CORALS -> range(7, 11);
                    case LARGE_POLYPS -> range(7.5, 10);
                    case SMALL_POLYPS -> range(7, 9.5);
                };
            case CALCIUM ->
                switch (keeping) {
                    case FISH -> range(350, 500);
                    case SOFT_CORALS -> range(380, 470);
                    case LARGE_POLYPS -> range(390, 460);
                    case SMALL_POLYPS -> range(400, 450);
                };
            case MAGNESIUM ->
                switch (keeping) {
                    case FISH -> range(1150, 1500);
                    case SOFT_CORALS -> range(1200, 1450);
                    case LARGE_POLYPS -> range(1250, 1420);
                    case SMALL_POLYPS -> range(1280, 1420);
                };
            case PH ->
                switch (keeping) {
                    case FISH, SOFT_CORALS -> range(7.8, 8.4);
                    case LARGE_POLYPS -> range(7.9, 8.4);
                    case SMALL_POLYPS -> range(8.0, 8.45);
                };
            case NITRATE ->
                switch (keeping) {
                    case FISH -> range(0, 40);
                    case SOFT_CORALS -> range(2, 25);
                    case LARGE_POLYPS -> range(2, 15);
                    case SMALL_POLYPS -> range(1, 12);
                };
            case PHOSPHATE ->
                switch (keeping) {
                    case FISH -> range(0, 0.8);
                    case SOFT_CORALS -> range(0.03, 0.20);
                    case LARGE_POLYPS -> range(0.03, 0.12);
                    case SMALL_POLYPS -> range(0.02, 0.10);
                };
            case AMMONIA -> range(0, 0.05);
            // As nitrogen 0.1 mg/L, and 0.05 where stony corals live.
            case NITRITE ->
                switch (keeping) {
                    case FISH, SOFT_CORALS -> range(0, 0.33);
                    case LARGE_POLYPS, SMALL_POLYPS -> range(0, 0.16);
                };
            case OXYGEN -> new double[0];
        };
    }

    private static double[] range(double least, double most) {
        return new double[] {least, most};
    }

    private static @Nullable Amount from(Targets targets, WaterQuantity quantity) {
        return switch (quantity) {
            case TEMPERATURE -> targets.temperatureFrom();
            case SALINITY -> targets.salinityFrom();
            case ALKALINITY -> targets.alkalinityFrom();
            case CALCIUM -> targets.calciumFrom();
            case MAGNESIUM -> targets.magnesiumFrom();
            case NITRATE -> targets.nitrateFrom();
            case PHOSPHATE -> targets.phosphateFrom();
            case PH, AMMONIA, NITRITE, OXYGEN -> null;
        };
    }

    private static @Nullable Amount to(Targets targets, WaterQuantity quantity) {
        return switch (quantity) {
            case TEMPERATURE -> targets.temperatureTo();
            case SALINITY -> targets.salinityTo();
            case ALKALINITY -> targets.alkalinityTo();
            case CALCIUM -> targets.calciumTo();
            case MAGNESIUM -> targets.magnesiumTo();
            case NITRATE -> targets.nitrateTo();
            case PHOSPHATE -> targets.phosphateTo();
            case PH, AMMONIA, NITRITE, OXYGEN -> null;
        };
    }

    private static @Nullable Amount stated(Plan plan, WaterQuantity quantity) {
        return switch (quantity) {
            case TEMPERATURE -> plan.water().temperature();
            case SALINITY -> plan.water().salinity();
            case ALKALINITY -> plan.water().alkalinity();
            case CALCIUM -> plan.water().calcium();
            case MAGNESIUM -> plan.water().magnesium();
            case NITRATE -> plan.water().nitrate();
            case PHOSPHATE -> plan.water().phosphate();
            case AMMONIA -> plan.water().ammonia();
            case NITRITE -> plan.water().nitrite();
            case PH, OXYGEN -> null;
        };
    }
}
