/**
 * Seawater by TEOS-10, today's international standard, at sea-surface pressure: exact from its Gibbs function, and by the
 * published polynomial for absolute salinity and conservative temperature. The laws in {@code density} and {@code heat}
 * are those of 1980, which test kits, handbooks and hydrometers are made after; the two differ by less than any
 * instrument of a keeper can tell.
 *
 * <p>May use {@code unit}, {@code range}, {@code salinity}. To add a property, take its derivative of the Gibbs function
 * at the sea surface and hold it against another code's over a grid.
 */
@NullMarked
package org.tidewright.seawater.teos10;

import org.jspecify.annotations.NullMarked;
