/**
 * What is measured in a water, the units it may be written in, and the methods by which keepers measure it, each with its
 * error.
 *
 * <p>The methods are data: a row of {@code test-methods.csv}, with the ground it stands on. To add one, add a row; to add a
 * quantity or a unit, a constant of {@link org.tidewright.plan.method.WaterQuantity}. Methods are kinds (drop titration,
 * photometer), never brands; a keeper's own kit differs from its kind by its bias, which the journal can learn.
 */
@NullMarked
package org.tidewright.plan.method;

import org.jspecify.annotations.NullMarked;
