/**
 * The dated record of a system: what was measured, dosed, changed, fed, done and seen, and the ports through which it is
 * kept.
 *
 * <p>A line of the journal is never overwritten: a correction is a further revision of it, and a line taken back stays as
 * struck. Numbers of readings are kept as they were written, with their unit; all else is in coherent units. Who keeps the
 * lines implements {@link org.tidewright.husbandry.journal.Journal}, {@link org.tidewright.husbandry.journal.ProbeLog} and
 * {@link org.tidewright.husbandry.journal.Photos}.
 *
 * <p>To record one more kind of thing, add a record to {@link org.tidewright.husbandry.journal.Event}: whoever stores or
 * writes lines then fails to compile until it knows it.
 */
@NullMarked
package org.tidewright.husbandry.journal;

import org.jspecify.annotations.NullMarked;
