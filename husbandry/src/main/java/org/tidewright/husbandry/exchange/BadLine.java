package org.tidewright.husbandry.exchange;

import org.tidewright.plan.fault.Fault;

/** Why an entry of a copy cannot be kept; the entries after it are looked at all the same. */
final class BadLine extends Exception {
    private static final long serialVersionUID = 1L;

    private final transient Fault fault;

    BadLine(Fault fault) {
        super(fault.sentence());
        this.fault = fault;
    }

    Fault fault() {
        return fault;
    }
}
