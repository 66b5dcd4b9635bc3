package org.tidewright.husbandry.dosing;

import java.util.Arrays;
import java.util.List;
import org.tidewright.husbandry.estimate.Estimate;
import org.tidewright.plan.method.TestMethod;
import org.tidewright.seawater.unit.Unit;

/**
 * How a keeper tests a quantity.
 *
 * @param every days from one test to the next
 * @param last time of the last one
 * @param method of the last one
 */
public record TestPace(@Unit("d") double every, @Unit("d") double last, TestMethod method) {
    /** Readings that count: a habit of last year is none. */
    private static final int RECENT = 9;

    private static final double WEEK = 7;
    private static final double SHORTEST = 1;
    private static final double LONGEST = 30;

    /** Of the last readings: the middle one of the times between them; a week where there is only one. */
    public static TestPace of(Estimate estimate) {
        return of(estimate.readings());
    }

    /** Of some readings, in order of time. */
    public static TestPace of(List<Estimate.Judged> readings) {
        List<Estimate.Judged> recent = readings.subList(Math.max(0, readings.size() - RECENT), readings.size());
        double[] between = new double[recent.size() - 1];
        for (int i = 0; i < between.length; i++) {
            between[i] =
                    recent.get(i + 1).reading().time() - recent.get(i).reading().time();
        }
        Arrays.sort(between);
        double usual = between.length == 0 ? WEEK : between[between.length / 2];
        Estimate.Judged last = readings.get(readings.size() - 1);
        return new TestPace(
                Math.max(SHORTEST, Math.min(LONGEST, usual)),
                last.reading().time(),
                last.reading().method());
    }

    /** When the next test is to be expected, not before now. */
    public @Unit("d") double next(@Unit("d") double now) {
        return Math.max(now, last + every);
    }
}
