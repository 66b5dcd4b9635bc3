package org.tidewright.husbandry.arrival;

import java.time.LocalDate;
import org.jspecify.annotations.Nullable;

/** What has happened to a wish, and no plan can change. */
public sealed interface Happened {
    /** The wish. */
    String id();

    /** The day it came. */
    LocalDate since();

    /** It is in quarantine. */
    record InQuarantine(String id, String tank, LocalDate since) implements Happened {}

    /**
     * It is in the display.
     *
     * @param tank its quarantine; null if it had none
     * @param day on which it went into the display
     */
    record InDisplay(String id, @Nullable String tank, LocalDate since, LocalDate day) implements Happened {}

    /**
     * It came, and died or was given away. It is on the list only for what it cost; nobody can come after it any more.
     *
     * @param day on which it was lost
     */
    record Lost(String id, LocalDate since, LocalDate day) implements Happened {}
}
