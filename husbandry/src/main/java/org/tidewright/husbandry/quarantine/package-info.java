/**
 * Animals watched before they come to a display, and displays that stand without fish until a parasite of theirs is gone:
 * who is in the tank and until when, what today asks for, what ammonia does in bare water, how long a fallow lasts.
 *
 * <p>All of it is computed from a plan and the lines of a log; days are those of the keeper's clock when a line was written.
 * Nothing here names, works out or suggests a dose of a medicine, nor tells an illness from its signs: that is for labels and
 * veterinarians. To let one more thing begin the count anew, add a {@link
 * org.tidewright.husbandry.quarantine.Restart.Cause} where {@link org.tidewright.husbandry.quarantine.Watch} reads the log; a
 * further parasite is one of {@link org.tidewright.husbandry.journal.Parasite} with its days in {@link
 * org.tidewright.husbandry.quarantine.FallowSpan}.
 */
@NullMarked
package org.tidewright.husbandry.quarantine;

import org.jspecify.annotations.NullMarked;
