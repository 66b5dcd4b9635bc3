/**
 * Seeded sampling and what is read off the samples: draws by name ({@link
 * org.tidewright.numerics.sample.StratifiedDraws} for an ensemble, {@link org.tidewright.numerics.sample.Draws} for one
 * draw alone), the standard normal's quantile, and quantiles of results.
 *
 * <p>Uses nothing else of the project, no clock and no dice but the seed given. To add a distribution, give it a class
 * with the inverse of its cumulative function, so that it can be stratified, and a test against printed values.
 */
@NullMarked
package org.tidewright.numerics.sample;

import org.jspecify.annotations.NullMarked;
