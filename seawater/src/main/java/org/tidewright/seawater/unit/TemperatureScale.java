package org.tidewright.seawater.unit;

/** Between the scale of today's thermometers and the one the formulas of the 1970s and 1980s were fitted on. */
public final class TemperatureScale {
    /** Temperature of the ice point, exact by definition of the degree Celsius. */
    @Unit("K")
    public static final double ICE_POINT = 273.15;

    private TemperatureScale() {}

    /**
     * Temperature on the International Practical Temperature Scale of 1968.
     *
     * <pre>t68 = 1.00024 t90</pre>
     *
     * @param temperature ITS-90
     * @return the same temperature on IPTS-68, in degrees Celsius
     * @source Saunders 1990, WOCE Newsletter 10; IOC, SCOR and IAPSO 2010, Manuals and Guides 56, appendix A.1
     * @validity -2 to 40 degC, within 0.5 mK
     */
    @Unit("degC")
    public static double ipts68(@Unit("degC") double temperature) {
        return 1.00024 * temperature;
    }

    /**
     * Temperature on today's scale, the inverse of {@link #ipts68}.
     *
     * @param ipts68 in degrees Celsius on IPTS-68
     * @return the same temperature, ITS-90
     * @source as {@link #ipts68}
     * @validity as {@link #ipts68}
     */
    @Unit("degC")
    public static double fromIpts68(@Unit("degC") double ipts68) {
        return ipts68 / 1.00024;
    }

    /**
     * Absolute temperature.
     *
     * @param temperature ITS-90
     * @return the same temperature in kelvin
     * @source definition of the degree Celsius
     * @validity everywhere
     */
    @Unit("K")
    public static double kelvin(@Unit("degC") double temperature) {
        return temperature + ICE_POINT;
    }
}
