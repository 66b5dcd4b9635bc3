package org.tidewright.numerics.ode;

/**
 * Where an advance came to rest.
 *
 * @param time the end asked for, or the time just past the crossing
 * @param crossed indexes, ascending, of the guards that crossed there; empty when the end was reached
 */
@SuppressWarnings("ArrayRecordComponent") // a list would box an index per event in the longest loop there is
public record Stop(double time, int[] crossed) {
    /** Whether the end was reached without a crossing. */
    public boolean reachedEnd() {
        return crossed.length == 0;
    }
}
