/**
 * In which order and on which days the animals of a wish list come, through quarantine into the display, and why each waits.
 *
 * <p>{@link org.tidewright.husbandry.arrival.ArrivalRequest} says what is wished and what limits it, {@link
 * org.tidewright.husbandry.arrival.ArrivalPlanner} answers with an {@link org.tidewright.husbandry.arrival.ArrivalPlan}. Pure
 * functions, no catalogue and no journal: who asks fills in the numbers. The request is translated into whole numbers for
 * {@link org.tidewright.husbandry.arrival.search}, which holds the rules and the solver, and the answer is told in dates,
 * names and {@link org.tidewright.husbandry.arrival.Reason}s.
 *
 * <p>To add a rule, begin with the package {@code search}; give {@code Translation} its numbers, {@code Reason} the record
 * that a keeper is told, and {@code Telling} the way from one to the other. To record one more thing that may happen, add a record
 * to {@link org.tidewright.husbandry.arrival.Change}.
 */
@NullMarked
package org.tidewright.husbandry.arrival;

import org.jspecify.annotations.NullMarked;
