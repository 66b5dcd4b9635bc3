package org.tidewright.plan.method;

import org.tidewright.plan.source.Basis;
import org.tidewright.seawater.unit.Unit;

/**
 * How a quantity is measured, and how far a reading may stand from the truth: scatter, which repeated readings average
 * away, and bias, which stays with the instrument or the bottle of reagent. All in the quantity's coherent unit.
 *
 * @param key name in files
 * @param name as a page says it
 * @param scatter standard error whatever is read
 * @param relativeScatter and as a share of what is read
 * @param resolution step from one number it can show to the next; 0 where it is finer than all else
 * @param bias standard error of what all its readings are off by
 * @param relativeBias and as a share of what is read
 * @param continuous whether it reads by itself all day, as a probe does
 * @param source publication, or what the practice is
 */
public record TestMethod(
        String key,
        WaterQuantity quantity,
        String name,
        @Unit("*") double scatter,
        @Unit("1") double relativeScatter,
        @Unit("*") double resolution,
        @Unit("*") double bias,
        @Unit("1") double relativeBias,
        boolean continuous,
        Basis basis,
        String source) {

    /** A number read to a step is off evenly by up to half of it: variance, step²/12. */
    private static final double OF_A_STEP = 1.0 / 12;

    /**
     * Standard error of one reading against another by the same method.
     *
     * <pre>s² = scatter² + (relative scatter × reading)² + resolution² / 12</pre>
     */
    public @Unit("*") double repeatability(@Unit("*") double reading) {
        double relative = relativeScatter * reading;
        return Math.sqrt(scatter * scatter + relative * relative + OF_A_STEP * resolution * resolution);
    }

    /** Standard error of what all readings near this one are off by, before the method was ever checked. */
    public @Unit("*") double biasError(@Unit("*") double reading) {
        return Math.hypot(bias, relativeBias * reading);
    }

    /** Standard error of one reading against the truth. */
    public @Unit("*") double standardError(@Unit("*") double reading) {
        return Math.hypot(repeatability(reading), biasError(reading));
    }
}
