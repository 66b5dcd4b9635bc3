/**
 * The laws of light: when it shines, what the water lets through, what photosynthesis makes of it.
 *
 * <p>May use {@code seawater} and the laws of {@code gas}; mechanisms call the laws. Light is the flux of photons of
 * 400 to 700 nm in mol/(m^2 s): 100 umol/(m^2 s) is 1e-4. To add a photosynthesiser, give it an entry of {@link
 * org.tidewright.twin.law.light.Phototroph} with the source of its rates.
 */
@NullMarked
package org.tidewright.twin.law.light;

import org.jspecify.annotations.NullMarked;
