/**
 * The laws of emergency power: how large a battery or a generator must be, how long it lasts, what it burns.
 *
 * <p>Energies are joules and charges coulombs inside; watt-hours and ampere-hours are the reader's. May use {@code
 * seawater} for units and refusals only. To add a source of power, give it a class with its own losses and a worked
 * example in {@code reference/power/}.
 */
@NullMarked
package org.tidewright.twin.law.power;

import org.jspecify.annotations.NullMarked;
