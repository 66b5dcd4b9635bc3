/**
 * pH explained: how much carbon dioxide a reading of pH and alkalinity stands for, whether the water holds more or less of it
 * than the room's air, how sure that is, and what each lever would do.
 *
 * <p>Every number comes out of the carbon dioxide system of the water ({@link org.tidewright.husbandry.ph.AiredWater}, the
 * one way from alkalinity and air to a meter's pH), levers out of steady balances; the course of a day with its light and
 * people is the twin's and stands in {@link org.tidewright.husbandry.day}. To add a lever, give {@link
 * org.tidewright.husbandry.ph.Lever} one more record with its balance, and {@code LeverWords} its sentence.
 */
@NullMarked
package org.tidewright.husbandry.ph;

import org.jspecify.annotations.NullMarked;
