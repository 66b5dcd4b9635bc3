package org.tidewright.husbandry.quantity;

import java.time.Instant;
import org.tidewright.husbandry.journal.ProbeLog.Probe;

/**
 * The probe a quantity is followed by.
 *
 * @param last beginning of the last hour in which it said something
 * @param live whether it said something within the last day
 */
public record ProbeWatch(Probe probe, Instant last, boolean live) {
    static ProbeWatch of(ProbeHours hours, Instant now) {
        return new ProbeWatch(hours.probe(), hours.last(), hours.isLive(now));
    }

    /** {@code the probe “sump”}. */
    public String words() {
        return "the probe “" + probe.place() + "”";
    }
}
