package org.tidewright.husbandry.reef;

import java.util.ArrayList;
import java.util.List;
import org.tidewright.seawater.unit.Unit;
import org.tidewright.twin.forecast.Change;
import org.tidewright.twin.system.Lever;
import org.tidewright.twin.system.SystemTwin;

/**
 * Lets the corals of a twin grow while a forecast runs: the lever that says how much of the plan's corals there is goes up week
 * by week, to what {@link Growth} has for the week's middle. Breath and food of the corals follow it, as they follow the
 * lever.
 */
public final class GrowthProgramme {
    /** Lever of the twin: the plan's corals, 1 for all. */
    public static final String LEVER = "corals";

    private static final double DAY = 86_400;
    private static final double WEEK = 7;
    private static final double YEAR = 365.25;

    /** Below this growth in the whole forecast nothing is changed. */
    private static final double NOTABLE = 1e-3;

    private GrowthProgramme() {}

    /** Changes for a forecast of some days; none where nothing grows that lays down skeleton. */
    public static List<Change> of(SystemTwin twin, Growth growth, @Unit("d") double days) {
        if (growth.ofCorals(days / YEAR) - 1 < NOTABLE) {
            return List.of();
        }
        Lever corals = twin.levers().get(LEVER);
        List<Change> changes = new ArrayList<>();
        for (double from = WEEK; from < days; from += WEEK) {
            double middle = Math.min(days, from + WEEK / 2);
            changes.add(new Change(corals, growth.ofCorals(middle / YEAR), from * DAY, Double.POSITIVE_INFINITY));
        }
        return List.copyOf(changes);
    }

    /** Whether some changes move the corals themselves, so that nothing else may. */
    public static boolean isMoved(List<Change> changes) {
        return changes.stream().anyMatch(change -> change.lever().name().equals(LEVER));
    }
}
