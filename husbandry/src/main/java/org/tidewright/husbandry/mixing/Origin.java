package org.tidewright.husbandry.mixing;

import org.tidewright.plan.source.Basis;

/**
 * Where a number came from that an answer begins with.
 *
 * @param detail as a note says it: {@code "6 March"}
 */
public record Origin(Basis basis, String detail) {
    /** The keeper's own word, written down nowhere else. */
    public static final Origin TYPED = new Origin(Basis.YOUR_LOG, "as you gave it");
}
