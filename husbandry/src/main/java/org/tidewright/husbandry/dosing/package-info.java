/**
 * What to do about a quantity that is used up and dosed: leave the dose alone, and why and until when; or move it, and to
 * where; or bring the level back first.
 *
 * <p>Pure functions of what is estimated of level and use. Numbers are in the quantity's coherent unit, and that a day; times
 * are days. {@link org.tidewright.husbandry.dosing.DoseRule} knows no quantity: to advise on another, say what its range and
 * its safe rate are.
 */
@NullMarked
package org.tidewright.husbandry.dosing;

import org.jspecify.annotations.NullMarked;
