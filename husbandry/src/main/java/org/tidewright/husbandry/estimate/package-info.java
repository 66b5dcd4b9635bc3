/**
 * From the journal to what is known: the level of each quantity of the water, what the system uses of it a day, each with its
 * doubt, at any time.
 *
 * <p>{@link org.tidewright.husbandry.estimate.Inputs} gathers what bears on it, {@link
 * org.tidewright.husbandry.estimate.Estimates} works it out, an {@link org.tidewright.husbandry.estimate.Estimate} tells it
 * and looks ahead, and {@link org.tidewright.husbandry.estimate.Foresight} says how much readings to come will teach. The
 * mathematics is {@code org.tidewright.numerics.filter}; the model, its priors and how well its intervals hold are in {@code
 * docs/science/estimation.md}.
 *
 * <p>All of it is pure. Levels are in the coherent units of {@link org.tidewright.plan.method.WaterQuantity}, times are days
 * since {@link org.tidewright.husbandry.estimate.Inputs#origin}, and rates are per day: what a keeper doses and tests by.
 *
 * <p>To estimate one more quantity, give it a row in {@code Priors}; one more thing that is known to come or go, a case where
 * {@code KnownDoses} or {@code KnownRenewals} reads the journal; a quantity that shares a cause with another, a drive in
 * {@code WaterModel}.
 */
@NullMarked
package org.tidewright.husbandry.estimate;

import org.jspecify.annotations.NullMarked;
