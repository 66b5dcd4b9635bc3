/**
 * Where nitrogen and phosphorus come from and where they go, and what a change of feed, skimmer, algae, medium or water
 * change would do in twelve weeks: {@link org.tidewright.husbandry.nutrient.NutrientForecast} runs the courses, {@link
 * org.tidewright.husbandry.nutrient.NutrientReport} is all that is told of them.
 *
 * <p>Uses the twin's forecast and {@link org.tidewright.husbandry.advice}. To offer one more thing to change, add it to
 * {@link org.tidewright.husbandry.nutrient.Handles}; a new pool of the twin that holds nitrogen or phosphorus belongs in
 * {@link org.tidewright.husbandry.nutrient.FlowPlace}.
 */
@NullMarked
package org.tidewright.husbandry.nutrient;

import org.jspecify.annotations.NullMarked;
