package org.tidewright.husbandry.quarantine;

import static java.util.Objects.requireNonNull;

import java.time.LocalTime;
import java.util.List;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.tidewright.plan.model.AirPump;
import org.tidewright.plan.model.Inhabitants;
import org.tidewright.plan.model.Plan;
import org.tidewright.plan.model.WaterChange;
import org.tidewright.plan.quantity.Amount;
import org.tidewright.seawater.unit.Unit;
import org.tidewright.twin.forecast.Change;
import org.tidewright.twin.forecast.Course;
import org.tidewright.twin.forecast.Forecast;
import org.tidewright.twin.forecast.Quantity;
import org.tidewright.twin.forecast.Variant;

/**
 * Ammonia in a quarantine tank, by the twin of its plan: its fish, its food and its sponge as the plan states them, from the
 * day they come.
 *
 * @param volume of its water
 * @param fish live mass
 * @param food fed a day, as fed
 * @param planned by the plan's own changes of water
 * @param unchanged without any change of water
 * @param unfiltered without any change, and with a sponge that does nothing, as after a medicine; the same as unchanged where
 *     there is no sponge
 */
public record BareTankWater(
        Plan plan,
        @Unit("m^3") double volume,
        @Unit("kg") double fish,
        @Unit("kg/d") double food,
        Run planned,
        Run unchanged,
        Run unfiltered) {
    /** Free ammonia to watch from, as nitrogen; the same as for a new tank, an estimate with no authority of its own. */
    @Unit("mg/L")
    public static final double AMBER = 0.02;

    /** Free ammonia that harms, as nitrogen; likewise. */
    @Unit("mg/L")
    public static final double RED = 0.03;

    /** The sea's chloride shields fish from nitrite below it, as nitrogen; likewise. */
    @Unit("mg/L")
    public static final double NITRITE = 0.5;

    /** A batch is followed so long: by then the panes have a film of their own. */
    private static final int DAYS = 30;

    private static final int A_DAY = 24;
    private static final double DAY = 86_400;

    /** Nobody changes more of the water than this every day. */
    private static final double MOST_CHANGED = 0.9;

    private static final double HALF = 0.5;
    private static final int HALVINGS = 7;
    private static final String DAILY = "daily change";
    private static final LocalTime EVENING = LocalTime.of(19, 0);
    private static final double SIPHONED = 90;
    private static final Set<Quantity> TOLD = Set.of(Quantity.AMMONIA, Quantity.FREE_AMMONIA, Quantity.NITRITE);

    /**
     * A course of its ammonia.
     *
     * @param amber day free ammonia reaches {@link #AMBER}; infinite for never
     * @param red day it reaches {@link #RED}
     * @param peak most free ammonia, as nitrogen
     * @param peakDay when
     * @param nitrite most of it, as nitrogen
     * @param held the least share of the water that has to be changed every day to stay under amber; 0 where none, infinite
     *     where even nine tenths are not enough; not sought, and not a number, where water is changed already
     */
    public record Run(
            Course course,
            @Unit("d") double amber,
            @Unit("d") double red,
            @Unit("mg/L") double peak,
            @Unit("d") double peakDay,
            @Unit("mg/L") double nitrite,
            @Unit("1") double held) {
        static Run of(Course course, double held) {
            double[] free = course.of(Quantity.FREE_AMMONIA);
            int highest = 0;
            double nitrite = 0;
            for (int i = 0; i < free.length; i++) {
                highest = free[i] > free[highest] ? i : highest;
                nitrite = Math.max(nitrite, course.of(Quantity.NITRITE)[i]);
            }
            return new Run(
                    course,
                    reaches(course, AMBER),
                    reaches(course, RED),
                    free[highest],
                    course.time()[highest] / DAY,
                    nitrite,
                    held);
        }

        private static double reaches(Course course, double bound) {
            double[] free = course.of(Quantity.FREE_AMMONIA);
            for (int i = 0; i < free.length; i++) {
                if (free[i] >= bound) {
                    return course.time()[i] / DAY;
                }
            }
            return Double.POSITIVE_INFINITY;
        }

        /** Whether it stays under amber. */
        public boolean isCalm() {
            return peak < AMBER;
        }
    }

    /** The water of a quarantine tank. */
    public static BareTankWater of(Plan plan) {
        Forecast own = Forecast.of(plan);
        double volume = own.twin().volume();
        Run unchanged = without(plan, volume);
        return new BareTankWater(
                plan,
                volume,
                fish(plan),
                plan.feeding().stream()
                        .mapToDouble(fed -> fed.mass().in("kg")
                                * fed.times().size()
                                / (fed.every() == null ? 1 : fed.every().in("s") / DAY))
                        .sum(),
                Run.of(course(own, List.of()), Double.NaN),
                unchanged,
                hasSponge(plan) ? without(withoutSponges(plan), volume) : unchanged);
    }

    private static double fish(Plan plan) {
        Inhabitants inhabitants = plan.inhabitants();
        return inhabitants == null
                ? 0
                : inhabitants.fish().stream()
                        .mapToDouble(fish -> fish.massOfOne() * fish.count())
                        .sum();
    }

    /** Without changes of water, and the least daily one that would hold it. */
    private static Run without(Plan plan, double volume) {
        WaterChange daily = new WaterChange(
                DAILY, Amount.of(HALF * volume * 1000, "L"), Amount.of(1, "d"), EVENING, Amount.of(SIPHONED, "%"));
        Forecast forecast =
                Forecast.of(Variant.of(plan).changing(List.of(daily)).plan());
        Course still = course(forecast, changed(forecast, 0));
        Run run = Run.of(still, 0);
        return run.isCalm() ? run : Run.of(still, held(forecast));
    }

    private static double held(Forecast forecast) {
        if (!Run.of(course(forecast, changed(forecast, MOST_CHANGED)), 0).isCalm()) {
            return Double.POSITIVE_INFINITY;
        }
        double low = 0;
        double high = MOST_CHANGED;
        for (int i = 0; i < HALVINGS; i++) {
            double middle = (low + high) / 2;
            boolean holds =
                    Run.of(course(forecast, changed(forecast, middle)), 0).isCalm();
            low = holds ? low : middle;
            high = holds ? middle : high;
        }
        return high;
    }

    /** The daily change is half of the water; its lever makes it any other share. */
    private static List<Change> changed(Forecast forecast, double share) {
        return List.of(Change.to(forecast.twin().levers().get("water changes"), share / HALF));
    }

    private static Course course(Forecast forecast, List<Change> changes) {
        return forecast.course(DAYS, DAYS * A_DAY + 1, TOLD, changes);
    }

    private static boolean hasSponge(Plan plan) {
        return plan.airPumps().stream().anyMatch(pump -> pump.sponge() != null);
    }

    private static Plan withoutSponges(Plan plan) {
        List<AirPump> bare = plan.airPumps().stream()
                .map(pump ->
                        new AirPump(pump.name(), pump.standsIn(), pump.power(), pump.airFlow(), pump.depth(), null))
                .toList();
        return Variant.of(plan).aired(bare).plan();
    }

    /** Whether it has a sponge that could fail. */
    public boolean isFiltered() {
        return hasSponge(plan);
    }

    /** Days from one change of the plan to the next, and its volume; null where it plans none. */
    public @Nullable WaterChange plannedChange() {
        return plan.waterChanges().isEmpty()
                ? null
                : requireNonNull(plan.waterChanges().get(0));
    }
}
