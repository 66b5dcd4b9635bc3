/**
 * Where corals stand and what they will ask of the water: light and flow at a place, whether a coral suits it and its
 * neighbours, how fast colonies grow and what that takes in alkalinity, calcium and magnesium.
 *
 * <p>Pure functions of a plan. Light is a {@link org.tidewright.husbandry.reef.LightField}, flow a {@link
 * org.tidewright.husbandry.reef.FlowField}; what a coral needs are {@link org.tidewright.husbandry.reef.CoralTraits}, which a
 * {@link org.tidewright.husbandry.reef.CoralLore} tells by species and {@link org.tidewright.husbandry.reef.FormTraits} by
 * form. To judge a coral by one more thing, add it to {@link org.tidewright.husbandry.reef.Placement} and say it in {@link
 * org.tidewright.husbandry.reef.PlacementWords}.
 */
@NullMarked
package org.tidewright.husbandry.reef;

import org.jspecify.annotations.NullMarked;
