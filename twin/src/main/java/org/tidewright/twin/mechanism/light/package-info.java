/**
 * Lamps over the water, as far as what grows below sees them; their heat is a device's.
 *
 * <p>To add a kind of light, write something that says how much falls on a place at a time, and stop the run wherever
 * that has a corner.
 */
@NullMarked
package org.tidewright.twin.mechanism.light;

import org.jspecify.annotations.NullMarked;
