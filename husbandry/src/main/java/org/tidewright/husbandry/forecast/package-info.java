/**
 * A forecast told to the keeper: changes as they write them, what to expect in a sentence, where a quantity leaves the band
 * that is common practice, and what moved it.
 *
 * <p>To tell one more quantity, add it to {@link org.tidewright.twin.forecast.Quantity} and, where it has bounds, to {@link
 * org.tidewright.husbandry.forecast.AlarmBand}.
 */
@NullMarked
package org.tidewright.husbandry.forecast;

import org.jspecify.annotations.NullMarked;
