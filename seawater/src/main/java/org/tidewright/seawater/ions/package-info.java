/**
 * What the salt of the sea is made of, and what waters become when they are mixed.
 *
 * <p>{@link org.tidewright.seawater.ions.MajorIon} is the table of the constituents,
 * {@link org.tidewright.seawater.ions.TestedElement} the same salt as test kits and laboratories report it; both are
 * {@link org.tidewright.seawater.ions.SeaSaltPart}s, which turn a salinity into an amount, a reading in mg/L into
 * mol/kg, and say whether a reading fits the salinity. {@link org.tidewright.seawater.ions.WaterParcel} is an amount of
 * water that can be mixed, diluted and evaporated. May use all other packages of {@code seawater}. To add what a kit
 * reports in another way, give {@code TestedElement} a constant; to let a parcel carry one more substance, give it a
 * component and its line in {@code mix}.
 */
@NullMarked
package org.tidewright.seawater.ions;

import org.jspecify.annotations.NullMarked;
