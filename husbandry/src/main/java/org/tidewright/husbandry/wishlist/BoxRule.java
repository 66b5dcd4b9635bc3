package org.tidewright.husbandry.wishlist;

import org.tidewright.husbandry.livestock.Animals;
import org.tidewright.husbandry.quarantine.BareTankWater;
import org.tidewright.seawater.unit.Unit;

/** What a quarantine tank carries, and how long who stays in it. */
final class BoxRule {
    /** Nobody is planned for who asks for more than half of the water changed a day; this project's own. */
    static final double DAILY_CHANGE = 0.5;

    /**
     * Live mass in bare water without a filter that a daily change of about half holds: 10 g in 40 L, docs/science/quarantine.md.
     */
    @Unit("kg/m^3")
    static final double WITHOUT_PLAN = 0.25;

    /** Water to each wish that shares a tank, and how many may at most: this project's own. */
    private static final double WATER_FOR_ONE = 0.020;

    private static final int MOST_WISHES = 4;

    /** Corals and what else is fixed are watched for their own pests so long; common practice. */
    static final int CORAL_DAYS = 14;

    private BoxRule() {}

    /**
     * Live mass it carries. The daily share of water that keeps free ammonia calm goes with the live mass (c = L/w), so that the
     * plan's fish times {@link #DAILY_CHANGE} over the share the twin finds for them is carried; at least those of a plan that is
     * calm as it is.
     */
    static @Unit("kg") double capacity(BareTankWater water) {
        double held = water.unchanged().held();
        if (water.fish() <= 0 || Double.isNaN(held) || Double.isInfinite(held)) {
            return WITHOUT_PLAN * water.volume();
        }
        return held <= 0 ? water.fish() : water.fish() * Math.min(MOST_OF_PLANNED, DAILY_CHANGE / held);
    }

    /** The law holds near the load it was run with; further it is not trusted. */
    private static final double MOST_OF_PLANNED = 2;

    /** Whether the twin of its plan says what it carries. */
    static boolean isByTwin(BareTankWater water) {
        double held = water.unchanged().held();
        return water.fish() > 0 && !Double.isNaN(held) && !Double.isInfinite(held);
    }

    static int wishes(BareTankWater water) {
        return (int) Math.max(1, Math.min(MOST_WISHES, Math.floor(water.volume() / WATER_FOR_ONE)));
    }

    /** Least days of an animal's stay; the tank's own days come on top where they are more. */
    static @Unit("d") int days(Animals animals, @Unit("d") int leastWatch) {
        return LiveMass.isFixed(animals) ? Math.min(CORAL_DAYS, leastWatch) : leastWatch;
    }
}
