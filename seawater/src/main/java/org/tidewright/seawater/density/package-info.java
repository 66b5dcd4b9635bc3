/**
 * How heavy water and seawater are.
 *
 * <p>{@link org.tidewright.seawater.density.Density} is EOS-80, which hydrometers and older tables go by; {@link
 * org.tidewright.seawater.density.Teos10} is today's standard, and gives specific heat and expansion from the same
 * function.
 *
 * <p>May use {@code unit} and {@code range}. To add a formulation, give it a class of its own named for its authors and
 * year, copy a grid computed by someone else's code to {@code src/test/resources/reference/density/}, and compare over
 * the whole grid: one printed check value does not prove a coefficient.
 */
@NullMarked
package org.tidewright.seawater.density;

import org.jspecify.annotations.NullMarked;
