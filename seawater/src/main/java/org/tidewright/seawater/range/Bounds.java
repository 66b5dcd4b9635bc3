package org.tidewright.seawater.range;

import org.tidewright.seawater.unit.Unit;

/**
 * Refuses numbers that cannot be meant, so that a slip of unit or a NaN is caught where it enters and not three sums
 * later. The limits are those of sense, far wider than any formula's fitted range.
 */
public final class Bounds {
    /** Below it seawater is ice, and the formulas for water have run out of meaning. */
    @Unit("degC")
    public static final double COLDEST_WATER = -10;

    /** No living system is near it. */
    @Unit("degC")
    public static final double HOTTEST_WATER = 60;

    /** Three times the saltiest sea: an open vessel left to dry. */
    @Unit("1")
    public static final double SALTIEST_WATER = 120;

    private Bounds() {}

    /**
     * Refuses a water temperature that cannot be meant.
     *
     * @param temperature in-situ temperature, ITS-90
     */
    public static void waterTemperature(@Unit("degC") double temperature) {
        within(
                temperature,
                "degC",
                COLDEST_WATER,
                HOTTEST_WATER,
                "water temperature",
                "is it in kelvin or fahrenheit?");
    }

    /**
     * Refuses a salinity that cannot be meant.
     *
     * @param practicalSalinity PSS-78
     */
    public static void practicalSalinity(@Unit("1") double practicalSalinity) {
        within(practicalSalinity, "1", 0, SALTIEST_WATER, "practical salinity", "is it in mg/kg or mS/cm?");
    }

    /**
     * Refuses a value outside {@code least} to {@code most}, and NaN.
     *
     * @param value the number to judge, in {@code unit} like its limits
     * @param unit written as in {@link Unit}
     * @param least smallest value allowed
     * @param most largest value allowed
     * @param what names the quantity in the message
     */
    public static void within(double value, String unit, double least, double most, String what) {
        within(value, unit, least, most, what, "");
    }

    private static void within(double value, String unit, double least, double most, String what, String likelySlip) {
        if (!(value >= least && value <= most)) {
            throw new IllegalArgumentException(what + " " + value + " " + unit + " is outside " + least + " to " + most
                    + " " + unit + (likelySlip.isEmpty() ? "" : "; " + likelySlip));
        }
    }
}
