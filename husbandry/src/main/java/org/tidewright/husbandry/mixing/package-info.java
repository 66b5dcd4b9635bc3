/**
 * The mixing desk: what a change of water does and how fast it may be done, how many changes reach a target, how much salt a
 * batch takes, how to bring salinity or temperature where they belong, and what to keep in reserve.
 *
 * <p>Each question is a record whose methods compute and whose {@code advice()} tells. Masses of water, salt and heat are
 * kept by {@link org.tidewright.seawater.ions.WaterParcel}; everything that a kit tells per litre goes with its amount. How
 * fast a quantity may move is common practice and stands in {@link org.tidewright.husbandry.limit.SafeRate} alone. To mix
 * one more quantity, name it in {@link org.tidewright.husbandry.mixing.KnownWater} and give it a measure in {@code Telling}.
 */
@NullMarked
package org.tidewright.husbandry.mixing;

import org.jspecify.annotations.NullMarked;
