/**
 * Numbers as a keeper writes them: {@code "90 cm"}, {@code "55 gal"}, {@code "3/4 in"}, {@code "20 kg ± 2 kg"}.
 *
 * <p>Uses the units library for what a unit is and how it converts; the table of symbols in {@link
 * org.tidewright.plan.quantity.TextUnit} says which of them a plan may use. To add a unit, add one line there and one to
 * docs/formats/plan.md.
 */
@NullMarked
package org.tidewright.plan.quantity;

import org.jspecify.annotations.NullMarked;
