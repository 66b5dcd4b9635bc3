package org.tidewright.husbandry.ph;

import org.tidewright.plan.method.TestMethod;
import org.tidewright.plan.method.TestMethods;
import org.tidewright.plan.method.WaterQuantity;
import org.tidewright.seawater.range.Bounds;
import org.tidewright.seawater.unit.Unit;

/**
 * A glass electrode that was set with two buffers some time ago.
 *
 * @param age since it was set
 */
public record Electrode(@Unit("s") double age) {
    /** What it wanders in a month; from memory. */
    private static final double DRIFT = 0.02;

    private static final double MONTH = 30 * 86_400;

    private static final TestMethod METHOD =
            TestMethods.find(WaterQuantity.PH, "electrode").orElseThrow();

    /** Refuses what cannot be meant. */
    public Electrode {
        Bounds.within(age, "s", 0, 10 * 365.25 * 86_400, "time since the electrode was set");
    }

    /** Just set. */
    public static Electrode fresh() {
        return new Electrode(0);
    }

    /** What all its readings are off by, one standard error: buffers, junction, drift. */
    public @Unit("1") double bias(@Unit("1") double ph) {
        return METHOD.biasError(ph) + DRIFT * age / MONTH;
    }

    /** What one reading differs from the next by, one standard error. */
    public @Unit("1") double scatter(@Unit("1") double ph) {
        return METHOD.repeatability(ph);
    }

    /** Of one reading against the truth. */
    public @Unit("1") double standardError(@Unit("1") double ph) {
        return Math.hypot(scatter(ph), bias(ph));
    }
}
