/**
 * Bounds on the display's water that must hold, each with its reason: the plan's own, or common practice.
 *
 * <p>To add a bound, add it to {@link org.tidewright.husbandry.limit.DisplayLimits} with its source, and to the plan's
 * {@code limits} block.
 */
@NullMarked
package org.tidewright.husbandry.limit;

import org.jspecify.annotations.NullMarked;
