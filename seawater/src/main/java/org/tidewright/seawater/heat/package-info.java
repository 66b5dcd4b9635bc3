/**
 * Heat and vapour: what it takes to warm seawater, to evaporate it, and how hard it presses into the air.
 *
 * <p>May use {@code unit}, {@code range} and {@code density}. Vapour pressures are those of the water alone, without
 * the 0.4 % by which air above it raises them. To add a formulation, see the signpost of {@code density}.
 */
@NullMarked
package org.tidewright.seawater.heat;

import org.jspecify.annotations.NullMarked;
