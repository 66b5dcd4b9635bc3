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
     * @return the value
     */
    public static @Unit("*") double within(
            @Unit("*") double value, String unit, @Unit("*") double least, @Unit("*") double most, String what) {
        return within(value, unit, least, most, what, "");
    }

    /**
     * Refuses a value outside {@code least} to {@code most}, and NaN, and says what slip is likely behind it.
     *
     * @param value the number to judge, in {@code unit} like its limits
     * @param unit written as in {@link Unit}
     * @param least smallest value allowed
     * @param most largest value allowed
     * @param what names the quantity in the message
     * @param likelySlip a question to ask oneself, or empty
     * @return the value
     */
    public static @Unit("*") double within(
            @Unit("*") double value,
            String unit,
            @Unit("*") double least,
            @Unit("*") double most,
            String what,
            String likelySlip) {
        if (!(value >= least && value <= most)) {
            throw new IllegalArgumentException(what + " " + with(unit, value) + " is outside " + least + " to "
                    + with(unit, most) + (likelySlip.isEmpty() ? "" : "; " + likelySlip));
        }
        return value;
    }

    /**
     * Refuses 0, what is below it, infinity and NaN.
     *
     * @param value the number to judge
     * @param unit written as in {@link Unit}
     * @param what names the quantity in the message
     * @return the value
     */
    public static @Unit("*") double positive(@Unit("*") double value, String unit, String what) {
        if (!(value > 0 && value < Double.POSITIVE_INFINITY)) {
            throw refusal(value, unit, what, "greater than 0 and finite");
        }
        return value;
    }

    /**
     * Refuses what is below 0, infinity and NaN.
     *
     * @param value the number to judge
     * @param unit written as in {@link Unit}
     * @param what names the quantity in the message
     * @return the value
     */
    public static @Unit("*") double notNegative(@Unit("*") double value, String unit, String what) {
        if (!(value >= 0 && value < Double.POSITIVE_INFINITY)) {
            throw refusal(value, unit, what, "0 or more and finite");
        }
        return value;
    }

    /**
     * Refuses infinity and NaN.
     *
     * @param value the number to judge
     * @param unit written as in {@link Unit}
     * @param what names the quantity in the message
     * @return the value
     */
    public static @Unit("*") double finite(@Unit("*") double value, String unit, String what) {
        if (!Double.isFinite(value)) {
            throw refusal(value, unit, what, "finite");
        }
        return value;
    }

    /**
     * Refuses NaN.
     *
     * @param value the number to judge
     * @param unit written as in {@link Unit}
     * @param what names the quantity in the message
     * @return the value
     */
    public static @Unit("*") double number(@Unit("*") double value, String unit, String what) {
        if (Double.isNaN(value)) {
            throw refusal(value, unit, what, "a number");
        }
        return value;
    }

    /**
     * A refusal to throw where no method of this class knows the range.
     *
     * @param value the number refused
     * @param unit written as in {@link Unit}
     * @param what names the quantity in the message
     * @param allowed what the number must be, to follow "it must be"
     */
    public static IllegalArgumentException refusal(@Unit("*") double value, String unit, String what, String allowed) {
        return new IllegalArgumentException(what + " is " + with(unit, value) + "; it must be " + allowed);
    }

    private static String with(String unit, @Unit("*") double value) {
        return unit.equals("1") ? "" + value : value + " " + unit;
    }
}
