package org.tidewright.husbandry.burden;

import org.tidewright.husbandry.TestPlans;
import org.tidewright.plan.model.Plan;
import org.tidewright.twin.forecast.Outlook.Range;

/** A burden of made-up figures in which nothing speaks against the animal, until one of them is changed. */
public final class HandMadeBurden {
    /** Soft corals and hammers: nitrate is held under 15 and phosphate under 0.12 mg/L by custom. */
    public static final Plan NANO = TestPlans.example("window-nano");

    public Addition addition = Addition.today(0.01, 1, 0.08);
    public Range calm = all(0);
    public double calmToday = 1;
    public double restless = 0;
    public double saturation = 90;
    public double grownSaturation = 88;
    public double nitrate = 8;
    public double grownNitrate = 10;
    public double ammonia = 0.02;
    public double hoursWithout = 8;
    public double hours = 7.8;
    public int endedEarly = 0;

    public static Range all(double value) {
        return new Range(value, value, value);
    }

    private static Compared compared(double without, double with) {
        return new Compared(all(without), all(with), all(with - without));
    }

    private static Sooner sooner(double without, double with) {
        return Sooner.of(new double[] {3600 * without}, new double[] {3600 * with});
    }

    /** As it stands now. */
    public Burden burden() {
        return new Burden(
                NANO,
                Lately.NOTHING,
                addition,
                Residents.usualOutage(),
                compared(0.01, ammonia),
                compared(0.001, 0.002),
                compared(0.01, 0.02),
                calm,
                calmToday,
                restless,
                compared(7, nitrate),
                compared(0.05, 0.06),
                compared(6.2, 6.1),
                compared(91, saturation),
                sooner(hoursWithout, hours),
                sooner(hoursWithout, hours),
                new Burden.Grown(
                        compared(7, grownNitrate),
                        compared(0.05, 0.07),
                        compared(6.2, 6.0),
                        compared(91, grownSaturation),
                        sooner(hoursWithout, hours),
                        sooner(hoursWithout, hours)),
                13,
                endedEarly);
    }
}
