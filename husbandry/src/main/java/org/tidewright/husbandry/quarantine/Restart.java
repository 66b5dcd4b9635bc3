package org.tidewright.husbandry.quarantine;

import java.time.LocalDate;
import org.tidewright.seawater.unit.Unit;

/**
 * A day from which the days of watching are counted.
 *
 * @param why in words, within a sentence
 * @param days to be watched from then on
 */
public record Restart(
        LocalDate on, Cause cause, String why, @Unit("d") int days) {
    /** What makes days count anew. */
    public enum Cause {
        ARRIVAL,
        LATER_ARRIVAL,
        SIGN,
        BREATHS,
        NOT_EATING,
        DEATH,
        TREATMENT
    }

    /** The first day after it on which the animals may go. */
    public LocalDate until() {
        return on.plusDays(days);
    }
}
