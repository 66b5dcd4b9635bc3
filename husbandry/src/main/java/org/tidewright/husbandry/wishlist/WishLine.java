package org.tidewright.husbandry.wishlist;

import java.time.LocalDate;
import org.jspecify.annotations.Nullable;
import org.tidewright.husbandry.livestock.Animals;

/**
 * Animals that are wished for and come together.
 *
 * @param price of all together, in hundredths of the currency's unit; null where it is not known
 * @param notBefore before which they cannot be had; null for any day
 * @param note the keeper's own words, may be empty
 * @param kept the days the keeper settled on; null for none yet
 */
public record WishLine(
        Animals animals,
        @Nullable Long price,
        @Nullable LocalDate notBefore,
        String note,
        @Nullable Kept kept) {

    /**
     * Days the keeper settled on.
     *
     * @param on day of settling
     * @param comes day they come
     * @param enters day they go into the display
     */
    public record Kept(LocalDate on, LocalDate comes, LocalDate enters) {}

    /** The same with days that are kept. */
    public WishLine keeping(@Nullable Kept days) {
        return new WishLine(animals, price, notBefore, note, days);
    }

    /** Whether another line wishes for as many of the same kind. */
    public boolean isSameWish(WishLine other) {
        return animals.isKind(other.animals())
                && animals.count() == other.animals().count();
    }
}
