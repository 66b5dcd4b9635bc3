package org.tidewright.husbandry.arrival;

import java.time.LocalDate;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.tidewright.husbandry.arrival.Happened.InDisplay;
import org.tidewright.husbandry.arrival.Happened.InQuarantine;
import org.tidewright.husbandry.arrival.Happened.Lost;
import org.tidewright.seawater.range.Bounds;

/**
 * What is wished for, and what limits it.
 *
 * @param start first day on which something may come
 * @param horizonDays last day on which something may go into the display, counted from the first
 * @param wishes all of them, those that have come included; where all else is equal, the earlier in the list comes earlier
 * @param happened what has come already
 */
public record ArrivalRequest(
        LocalDate start,
        int horizonDays,
        List<Wish> wishes,
        List<QuarantineTank> tanks,
        Pace pace,
        Set<Trouble> troubles,
        Set<PreyFirst> preyFirst,
        List<Happened> happened) {
    private static final int LONGEST = 3660;

    /** Refuses what cannot be meant; what merely cannot be planned is told in the plan. */
    public ArrivalRequest {
        Bounds.within(horizonDays, "d", 1, LONGEST, "days to plan");
        wishes = List.copyOf(wishes);
        tanks = List.copyOf(tanks);
        troubles = Set.copyOf(troubles);
        preyFirst = Set.copyOf(preyFirst);
        happened = List.copyOf(happened);
        distinct("wish", wishes.stream().map(Wish::id).toList());
        distinct("quarantine tank", tanks.stream().map(QuarantineTank::name).toList());
        distinct("event of wish", happened.stream().map(Happened::id).toList());
        Set<String> ids = new HashSet<>(wishes.stream().map(Wish::id).toList());
        Set<String> names =
                new HashSet<>(tanks.stream().map(QuarantineTank::name).toList());
        for (Happened each : happened) {
            if (!ids.contains(each.id())) {
                throw new IllegalArgumentException(
                        "\"" + each.id() + "\" has come, but is no wish of this list; name the wish it was");
            }
            LocalDate day = last(each);
            if (day.isAfter(start) || each.since().isAfter(day)) {
                throw new IllegalArgumentException("\"" + each.id() + "\" came on " + each.since() + ", then " + day
                        + "; what has happened must be in order, and no later than the first day, " + start);
            }
            if (each instanceof InQuarantine quarantine && !names.contains(quarantine.tank())) {
                throw new IllegalArgumentException("\"" + each.id() + "\" is in \"" + quarantine.tank()
                        + "\", which is no quarantine tank of this list; the list has " + names);
            }
        }
    }

    /** The last day of which something is known to have happened. */
    private static LocalDate last(Happened happened) {
        if (happened instanceof InDisplay display) {
            return display.day();
        }
        return happened instanceof Lost lost ? lost.day() : happened.since();
    }

    private static void distinct(String what, List<String> names) {
        Set<String> seen = new HashSet<>();
        for (String name : names) {
            if (!seen.add(name)) {
                throw new IllegalArgumentException(
                        what + " \"" + name + "\" is there twice; each must have a name of its own");
            }
        }
    }

    /** The last day on which something may go into the display. */
    public LocalDate end() {
        return start.plusDays(horizonDays);
    }

    /** A wish by its id. */
    public Optional<Wish> wish(String id) {
        return wishes.stream().filter(wish -> wish.id().equals(id)).findFirst();
    }

    /** What has happened to a wish. */
    public Optional<Happened> happened(String id) {
        return happened.stream().filter(each -> each.id().equals(id)).findFirst();
    }

    /** The day a wish went into the display, if it did. */
    Optional<LocalDate> inDisplay(String id) {
        return happened(id)
                .filter(InDisplay.class::isInstance)
                .map(InDisplay.class::cast)
                .map(InDisplay::day);
    }

    /** Whether a wish came and is no more. */
    boolean isLost(String id) {
        return happened(id).filter(Lost.class::isInstance).isPresent();
    }
}
