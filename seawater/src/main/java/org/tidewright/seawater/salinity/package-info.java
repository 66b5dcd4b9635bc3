/**
 * Salinity and the amount of salt behind it.
 *
 * <p>Practical salinity (PSS-78, a number without unit) is the project's state; a mass of salt is derived from it
 * through the reference composition. May use {@code unit}, {@code range} and {@code density}. To add a way of measuring
 * salinity, give it a class named for what is measured, in both directions, and test the round trip.
 */
@NullMarked
package org.tidewright.seawater.salinity;

import org.jspecify.annotations.NullMarked;
