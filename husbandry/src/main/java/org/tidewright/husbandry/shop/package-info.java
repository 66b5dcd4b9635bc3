/**
 * Buying an animal with the eyes open: what to look at in a shop before one is bought, what each bad sign means, what
 * several add up to, and every species of the catalogue judged beforehand for one system.
 *
 * <p>Signs are data: {@link org.tidewright.husbandry.shop.FishSigns}, {@link org.tidewright.husbandry.shop.CoralSigns} and
 * {@link org.tidewright.husbandry.shop.OtherSigns}. Their words are our own; each says what it stands on. None of them is a
 * diagnosis, and nothing here names a medicine's dose: that is for a veterinarian.
 *
 * <p>To add a sign, add a row in the class of its kind, with a clause that begins with “it” where it can: {@link
 * org.tidewright.husbandry.shop.Tally} makes its sentence of these.
 */
@NullMarked
package org.tidewright.husbandry.shop;

import org.jspecify.annotations.NullMarked;
