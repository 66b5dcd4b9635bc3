/**
 * How readily seawater passes on momentum (viscosity; heat conduction and diffusion have their place here too).
 *
 * <p>May use {@code unit}, {@code range} and {@code salinity}. To add a formulation, see the signpost of {@code
 * density}.
 */
@NullMarked
package org.tidewright.seawater.transport;

import org.jspecify.annotations.NullMarked;
