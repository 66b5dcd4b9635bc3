/**
 * A system as its keeper describes it. Each record is one block of the plan file: its components are the block's keys in
 * snake case, and the {@link org.tidewright.plan.model.Entry} on a component says what it means, in which unit and
 * between which bounds. The reader, the writer, the JSON Schema and the table in docs/formats/plan.md all follow from
 * these records.
 *
 * <p>To add a key, add a component with its {@code @Entry}; {@code @Nullable} makes it optional. A rule that looks at two
 * keys at once belongs in {@link org.tidewright.plan.rule}. A word the plan may use is a constant of an enum here; where
 * it stands for a number, as a fitting for its loss, the number and its source are kept with it.
 */
@NullMarked
package org.tidewright.plan.model;

import org.jspecify.annotations.NullMarked;
