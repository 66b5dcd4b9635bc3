package org.tidewright.twin.forecast;

import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.tidewright.seawater.unit.Unit;
import org.tidewright.twin.run.Account;
import org.tidewright.twin.run.Occurrence;

/**
 * What a forecast found.
 *
 * @param time of the samples, since the first midnight
 * @param values of each quantity, in its unit
 * @param events what happened on the way
 * @param account what moved every stock over the whole of it, or over its end where that was asked for
 * @param brokenOff why it ends before its time, where the system comes to a state no law of the twin holds for; else null
 */
public record Course(
        @Unit("s") double[] time,
        @Unit("*") Map<Quantity, double[]> values,
        List<Occurrence> events,
        Account account,
        @Nullable String brokenOff) {
    private static final double DAY = 86_400;

    /** The samples of a quantity. */
    public @Unit("*") double[] of(Quantity quantity) {
        double[] samples = values.get(quantity);
        if (samples == null) {
            throw new IllegalArgumentException(quantity + " was not asked for");
        }
        return samples;
    }

    /** Mean of its samples within the last day. */
    public @Unit("*") double meanOfLastDay(Quantity quantity) {
        double[] samples = of(quantity);
        double from = time[time.length - 1] - DAY;
        double sum = 0;
        int count = 0;
        for (int i = time.length - 1; i >= 0 && (time[i] > from || count == 0); i--) {
            sum += samples[i];
            count++;
        }
        return sum / count;
    }

    /** Its last sample. */
    public @Unit("*") double last(Quantity quantity) {
        double[] samples = of(quantity);
        return samples[samples.length - 1];
    }
}
