package org.tidewright.husbandry.journal;

import java.time.Instant;
import java.util.List;
import org.tidewright.plan.method.WaterQuantity;
import org.tidewright.seawater.unit.Unit;

/**
 * What probes say by themselves, minute for minute: too much to be lines of a journal. A value is on disk when the call that
 * appends it returns.
 */
public interface ProbeLog {
    /**
     * One probe's record.
     *
     * @param quantity what it measures
     * @param method key of how
     * @param place what the keeper calls it: “sump”
     */
    record Probe(WaterQuantity quantity, String method, String place) {}

    /** One value of a probe, in the coherent unit of its quantity. */
    record Value(Instant at, @Unit("*") double value) {}

    /**
     * What a probe said within a stretch of time.
     *
     * @param from beginning of the stretch
     * @param count of values in it
     */
    record Bin(
            Instant from,
            int count,
            @Unit("*") double least,
            @Unit("*") double mean,
            @Unit("*") double most) {}

    /** Keeps values, all or none; of a time that is kept already, the later value stands. */
    void append(String system, Probe probe, List<Value> values);

    /** All probes of a system that ever said something, in order of their names. */
    List<Probe> probes(String system);

    /** Every value within a time, in order. */
    List<Value> values(String system, Probe probe, Span span);

    /**
     * For a chart: stretches of one length, as fine as gives no more than so many; empty ones are left out. The length is a
     * minute, an hour or a day, or the values one by one where they are few enough.
     */
    List<Bin> bins(String system, Probe probe, Span span, int most);
}
