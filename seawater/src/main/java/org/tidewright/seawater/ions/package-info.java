/**
 * What sea salt is made of ({@link org.tidewright.seawater.ions.MajorIon}), and waters that are mixed, diluted and left
 * to evaporate ({@link org.tidewright.seawater.ions.WaterParcel}).
 *
 * <p>May use {@code unit}, {@code range}, {@code density}, {@code heat}, {@code salinity}, {@code carbonate}. To follow one
 * more dissolved thing through mixing, give {@code WaterParcel} a component and its line in {@code mixedWith}.
 */
@NullMarked
package org.tidewright.seawater.ions;

import org.jspecify.annotations.NullMarked;
