/**
 * Between a keeper's wish list and the planner of arrivals: reads the list, asks the rules of livestock, the plans, the logs and the
 * twin for what the planner wants to know, and tells its answer.
 *
 * <p>{@link org.tidewright.husbandry.wishlist.WishFile} and {@link org.tidewright.husbandry.wishlist.WishText} read a {@link
 * org.tidewright.husbandry.wishlist.WishList}; {@link org.tidewright.husbandry.wishlist.ArrivalStudy} makes of it and of a
 * {@link org.tidewright.husbandry.wishlist.Household} the dates, with who cannot come and why. Pure functions: files are read and
 * kept by the program. No rule of livestock stands here a second time.
 *
 * <p>To take one more thing into account, give {@code Household} what tells of it, turn it into a number of the planner's request in
 * a class of its own beside {@code BoxRule} and {@code PaceRule}, and let {@code RequestBuilder} fill it in; what the keeper is to
 * be told of it stands in {@code ReasonWords} or {@code ArrivalWords}.
 */
@NullMarked
package org.tidewright.husbandry.wishlist;

import org.jspecify.annotations.NullMarked;
