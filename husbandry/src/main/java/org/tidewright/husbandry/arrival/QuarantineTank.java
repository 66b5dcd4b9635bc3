package org.tidewright.husbandry.arrival;

import java.time.LocalDate;
import org.tidewright.seawater.range.Bounds;
import org.tidewright.seawater.unit.Unit;

/**
 * A quarantine tank. All in, all out: those who share it come on one day and leave on one day, and nobody joins them.
 *
 * @param name of its own
 * @param capacity live mass it can carry
 * @param batches wishes that may share it, one as a rule
 * @param freeFrom first day on which somebody may move in
 * @param dryDays days it stands dry between two stays
 * @param watchDays least days of a stay, whoever it is
 */
public record QuarantineTank(
        String name, @Unit("kg") double capacity, int batches, LocalDate freeFrom, int dryDays, int watchDays) {
    /** Refuses what cannot be meant. */
    public QuarantineTank {
        Bounds.positive(capacity, "kg", "capacity of " + name);
        Bounds.within(batches, "1", 1, 100, "batches that may share " + name);
        Bounds.within(dryDays, "d", 0, 365, "dry days of " + name);
        Bounds.within(watchDays, "d", 0, 365, "days of watch in " + name);
    }

    QuarantineTank freeFrom(LocalDate day) {
        return new QuarantineTank(name, capacity, batches, day, dryDays, watchDays);
    }
}
