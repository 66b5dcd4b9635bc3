package org.tidewright.husbandry.arrival;

import java.time.LocalDate;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * A wish with its days.
 *
 * @param id of the wish
 * @param tank where it stays in quarantine; null if it goes straight into the display
 * @param in day it comes
 * @param out day it goes into the display
 * @param waits for what: whatever it would run into a day earlier, the others as they are. Empty if nothing but its own
 *     quarantine takes the time, or it has happened
 */
public record Arrival(String id, @Nullable String tank, LocalDate in, LocalDate out, List<Reason> waits, Stage stage) {
    /** Keeps a list of its own. */
    public Arrival {
        waits = List.copyOf(waits);
    }

    /** How far it is. */
    public enum Stage {
        PLANNED,
        IN_QUARANTINE,
        IN_DISPLAY
    }
}
