/**
 * How readily seawater passes on momentum (viscosity) and heat (conduction); diffusion has its place here too.
 *
 * <p>May use {@code unit}, {@code range} and {@code salinity}. To add a formulation, see the signpost of {@code
 * density}.
 */
@NullMarked
package org.tidewright.seawater.transport;

import org.jspecify.annotations.NullMarked;
