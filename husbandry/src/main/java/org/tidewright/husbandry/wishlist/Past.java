package org.tidewright.husbandry.wishlist;

import java.time.LocalDate;
import org.jspecify.annotations.Nullable;

/** What the logs tell of a wish whose days were kept. */
sealed interface Past {
    /** Nobody of it has come. */
    record Awaited() implements Past {}

    /**
     * It is in quarantine.
     *
     * @param alive how many are left of it
     */
    record InBox(String box, LocalDate since, int alive) implements Past {}

    /**
     * It is in the display.
     *
     * @param box where it was before; null where it came without
     */
    record InDisplay(@Nullable String box, LocalDate since, LocalDate day, int alive) implements Past {}

    /**
     * It came and is no more.
     *
     * @param died or left
     */
    record Gone(LocalDate since, LocalDate day, boolean died) implements Past {}
}
