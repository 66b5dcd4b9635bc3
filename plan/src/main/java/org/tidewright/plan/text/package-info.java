/**
 * The plan file as text: YAML in, a {@link org.tidewright.plan.model.Plan} or a list of faults out, and back again.
 *
 * <p>One mechanism serves every block: {@link org.tidewright.plan.text.RecordReader} and {@link
 * org.tidewright.plan.text.RecordWriter} follow the records of {@link org.tidewright.plan.model}. To add a key, change
 * the record; nothing here knows any key by name.
 */
@NullMarked
package org.tidewright.plan.text;

import org.jspecify.annotations.NullMarked;
