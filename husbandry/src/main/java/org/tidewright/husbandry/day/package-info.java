/**
 * A day told to the keeper: what holds the pH down, what its habits do to pH, oxygen and temperature, and what would help.
 *
 * <p>Runs {@link org.tidewright.twin.forecast.UsualDay} and finds the words. To try one more habit, add it there and name it
 * in {@link org.tidewright.husbandry.day.DayWords}.
 */
@NullMarked
package org.tidewright.husbandry.day;

import org.jspecify.annotations.NullMarked;
