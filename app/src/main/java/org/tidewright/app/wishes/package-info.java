/**
 * Wish lists on disk, one file a system, beside the folders of the plans: {@code harbour-room.wishes.csv}.
 *
 * <p>What is in a file is read by {@link org.tidewright.husbandry.wishlist.WishFile}; here it is only fetched and written whole. To
 * keep one more text of the keeper's beside the plans, do as {@link org.tidewright.app.wishes.WishFolder} does.
 */
@NullMarked
package org.tidewright.app.wishes;

import org.jspecify.annotations.NullMarked;
