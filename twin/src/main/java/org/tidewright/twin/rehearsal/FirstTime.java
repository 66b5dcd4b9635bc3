package org.tidewright.twin.rehearsal;

import org.tidewright.numerics.sample.Quantiles;
import org.tidewright.seawater.unit.Unit;

/**
 * When something first happened over many draws; infinite for never.
 *
 * @param low the 5th of 100 draws
 * @param middle the 50th
 * @param high the 95th
 * @param share of the draws in which it happened at all
 */
public record FirstTime(
        @Unit("s") double low,
        @Unit("s") double middle,
        @Unit("s") double high,
        @Unit("1") double share) {
    static FirstTime of(@Unit("s") double[] times) {
        Quantiles quantiles = Quantiles.of(times);
        int happened = 0;
        for (double time : times) {
            happened += Double.isFinite(time) ? 1 : 0;
        }
        return new FirstTime(
                quantiles.at(0.05), quantiles.at(0.5), quantiles.at(0.95), (double) happened / times.length);
    }

    /** Whether it happened in the middle draw. */
    public boolean happens() {
        return Double.isFinite(middle);
    }
}
