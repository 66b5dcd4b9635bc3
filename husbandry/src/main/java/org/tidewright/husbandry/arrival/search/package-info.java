/**
 * Order and dates of arrivals as a puzzle in whole numbers, and its solution by the constraint solver choco-solver: nothing
 * else in Tidewright knows that solver.
 *
 * <p>{@link org.tidewright.husbandry.arrival.search.Puzzle} says what is asked, {@link
 * org.tidewright.husbandry.arrival.search.Schedule} is an answer, {@link org.tidewright.husbandry.arrival.search.Rulebook}
 * tells in plain code which rules an answer breaks, {@link org.tidewright.husbandry.arrival.search.Search} finds the best.
 * Batches and tanks are numbered from 0, days from the first that can still be planned, masses in grains.
 *
 * <p>To add a rule: say it in {@code Rulebook}; post it to the solver in the class of its subject ({@code StayRules}, {@code
 * PaceRules}, {@code BudgetRules}, {@code OrderRules}); add it to the tests' own {@code PlanChecker}. Between additions that
 * are already in order a rule may only ask for a later day, never for an earlier one: {@code InTurn} gives every batch the
 * first day that is left.
 */
@NullMarked
package org.tidewright.husbandry.arrival.search;

import org.jspecify.annotations.NullMarked;
