package org.tidewright.husbandry.estimate;

import org.tidewright.seawater.unit.Unit;

/**
 * What a straight line through readings tells of a use, without a filter: the reckoning that a spreadsheet can do, in closed
 * form. The project's handbook, section 3.3.
 */
public final class FittedSlope {
    private FittedSlope() {}

    /**
     * Standard error of the slope of a line through readings that come evenly, of a level that falls straight.
     *
     * <pre>se = σ √(12 / (N (N² - 1))) / Δ</pre>
     *
     * @param error σ of one reading
     * @param readings N, 2 or more
     * @param gap Δ from one to the next
     * @source any textbook of regression, as Draper and Smith 1998, Applied Regression Analysis, section 1.4: Σ(t - t̄)² of
     *     N even times is Δ² N (N² - 1) / 12
     */
    public static @Unit("*") double error(@Unit("*") double error, int readings, @Unit("d") double gap) {
        double n = readings;
        return error * Math.sqrt(12 / (n * (n * n - 1))) / gap;
    }

    /**
     * Variance of the slope of a line through daily readings, as a measure of the use at either end, if the use walks.
     *
     * <pre>12 σ² / T³ + 13/35 q T</pre>
     *
     * <p>The second part: a line weighs the use at a time t by 6 t (T - t) / T³, and a walk that begins at 0 then has the
     * variance q T ∫ (1 - 3x² + 2x³)² dx from 0 to 1.
     *
     * @param error σ of one reading
     * @param useWalk √q, what shakes the use a √day
     * @param lasts T
     */
    public static @Unit("*") double variance(
            @Unit("*") double error, @Unit("*") double useWalk, @Unit("d") double lasts) {
        return 12 * error * error / (lasts * lasts * lasts) + 13.0 / 35 * useWalk * useWalk * lasts;
    }

    /**
     * How long to test daily before a line is drawn: longer makes it worse, because the use has moved on.
     *
     * <pre>T* = (36 σ² 35 / (13 q))^(1/4)</pre>
     */
    public static @Unit("d") double best(@Unit("*") double error, @Unit("*") double useWalk) {
        return Math.pow(36 * 35 / 13.0 * error * error / (useWalk * useWalk), 0.25);
    }
}
