/**
 * What will happen to a system, and what would if something were changed: a {@link
 * org.tidewright.twin.forecast.Forecast} runs the complete twin with a short list of {@link
 * org.tidewright.twin.forecast.Change changes} and tells {@link org.tidewright.twin.forecast.Quantity quantities} along
 * the way, with what moved them.
 *
 * <p>To tell one more quantity, add it to {@code Quantity}; to let one more thing be changed, declare a lever where it is
 * assembled in {@link org.tidewright.twin.system}.
 */
@NullMarked
package org.tidewright.twin.forecast;

import org.jspecify.annotations.NullMarked;
