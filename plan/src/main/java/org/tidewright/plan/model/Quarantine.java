package org.tidewright.plan.model;

import org.jspecify.annotations.Nullable;
import org.tidewright.plan.quantity.Amount;
import org.tidewright.seawater.unit.Unit;

/**
 * What makes a system a quarantine tank: animals are watched in it before they come to another. It stands empty and dry
 * between two batches, so that each begins with washed panes, new water and the bacteria that are brought along.
 */
public record Quarantine(
        @Entry("name of the system its animals go to") String serves,

        @Entry(
                value = "days a batch is watched without a sign of disease, in whole days; 30 d when left out",
                unit = "s",
                least = 14 * 86400.0,
                most = 180 * 86400.0)
        @Nullable
        Amount watch,

        @Entry(
                value = "days it stands dry between two batches, in whole days; 3 d when left out",
                unit = "s",
                least = 0,
                most = 60 * 86400.0)
        @Nullable
        Amount dry) {
    private static final double DAY = 86_400;

    /** Where the plan does not say; common practice. */
    @Unit("d")
    public static final int USUAL_WATCH = 30;

    /** Where the plan does not say; common practice. */
    @Unit("d")
    public static final int USUAL_DRY = 3;

    /** Whole days of watching. */
    public @Unit("d") int watchDays() {
        return watch == null ? USUAL_WATCH : (int) Math.round(watch.in("s") / DAY);
    }

    /** Whole days it stands dry. */
    public @Unit("d") int dryDays() {
        return dry == null ? USUAL_DRY : (int) Math.round(dry.in("s") / DAY);
    }

    /** Whether it serves a system, told by its name or by the name of its folder. */
    public boolean isFor(String name, String id) {
        String served = serves.strip();
        return served.equalsIgnoreCase(name) || served.equalsIgnoreCase(id);
    }
}
