package org.tidewright.husbandry.livestock;

import java.time.LocalDate;
import java.time.ZoneId;
import java.time.temporal.ChronoUnit;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.tidewright.husbandry.journal.Line;
import org.tidewright.husbandry.water.SystemWater;
import org.tidewright.plan.model.Display;
import org.tidewright.plan.model.Feeding;
import org.tidewright.plan.model.Plan;
import org.tidewright.seawater.unit.Unit;

/** What the system of a plan offers. */
public final class Homes {
    private static final double DAY = 86_400;
    private static final double DAYS_A_MONTH = 365.25 / 12;

    /** Dry mass of a bed of coral sand over its volume, 1400 to 1600 kg/m³; from memory. */
    private static final double BULK = 1500;

    /** Water swings by so much around what is kept; common practice. */
    private static final double SWING = 0.5;

    private static final double OFTEN = 3;

    private Homes() {}

    /**
     * As it stands.
     *
     * @param age of the tank in months; null where nobody knows, see {@link #age}
     * @param alkalinitySpread over the last 30 days; null where it is not known
     */
    public static Home of(
            Plan plan, @Nullable @Unit("month") Double age, @Nullable @Unit("mol/m^3") Double alkalinitySpread) {
        Display display = plan.display();
        double floor = display.length().in("m") * display.width().in("m");
        double kept = plan.water().temperature().in("degC");
        double meals = meals(plan);
        return new Home(
                display.length().in("m"),
                display.width().in("m"),
                display.height().in("m"),
                SystemWater.volume(plan),
                display.cover(),
                display.sand() == null ? 0 : display.sand().dryMass().in("kg") / BULK / floor,
                display.rock() == null ? 0 : display.rock().dryMass().in("kg"),
                kept - SWING,
                kept + SWING,
                age,
                alkalinitySpread,
                foods(plan, meals),
                meals);
    }

    /** Months since the log begins; null where it is empty. */
    public static @Nullable @Unit("month") Double age(List<Line> lines, LocalDate today, ZoneId zone) {
        return lines.stream()
                .map(line -> line.at().atZoneSameInstant(zone).toLocalDate())
                .min(LocalDate::compareTo)
                .map(first -> ChronoUnit.DAYS.between(first, today) / DAYS_A_MONTH)
                .orElse(null);
    }

    private static double meals(Plan plan) {
        return plan.feeding().stream()
                .mapToDouble(feeding -> feeding.times().size()
                        / (feeding.every() == null ? 1 : feeding.every().in("s") / DAY))
                .sum();
    }

    private static Set<Home.Given> foods(Plan plan, double meals) {
        Set<Home.Given> foods = EnumSet.noneOf(Home.Given.class);
        for (Feeding feeding : plan.feeding()) {
            foods.add(
                    switch (feeding.food()) {
                        case DRY_PELLET, FLAKE, FREEZE_DRIED -> Home.Given.DRY;
                        case FROZEN_MYSIS, FROZEN_BRINE_SHRIMP, CHOPPED_SEAFOOD -> Home.Given.FROZEN;
                        case SEAWEED_SHEET -> Home.Given.ALGAE;
                        case PHYTOPLANKTON -> Home.Given.CORAL_FOOD;
                    });
        }
        if (meals >= OFTEN) {
            foods.add(Home.Given.MANY_SMALL);
        }
        return foods;
    }
}
