package org.tidewright.twin.law.gas;

import org.tidewright.seawater.gas.MolarMass;
import org.tidewright.seawater.range.Bounds;
import org.tidewright.seawater.unit.Unit;

/** Oxygen that rising air gives to the water, by the practice of aeration engineering. */
public final class Bubbles {
    /** Share of its oxygen that a coarse stone's air gives up per metre, 0.02 to 0.04; from memory. */
    @Unit("1/m")
    public static final double COARSE = 0.04;

    /** The same for a fine stone, 0.04 to 0.08; from memory. */
    @Unit("1/m")
    public static final double FINE = 0.06;

    /** Seawater over clean water, 0.9 to 1.0; from memory. */
    @Unit("1")
    public static final double ALPHA = 0.95;

    private static final double OXYGEN_IN_AIR = 0.279 / MolarMass.OXYGEN; // mol/m^3, from 0.279 kg/m^3 at 20 degC
    private static final double STANDARD_SATURATION = 9.09e-3 / MolarMass.OXYGEN; // mol/m^3, fresh water, 20 degC
    private static final double PER_KELVIN = 1.024;

    private Bubbles() {}

    /**
     * Transfer into clean oxygen-free fresh water at 20 degC, the standard rate of the trade.
     *
     * <pre>SOTR = Q 0.279 kg/m^3 e z</pre>
     *
     * @param airFlow Q at the stone, below the pump's free flow
     * @param depth z of the stone
     * @param efficiency e per metre, {@link #COARSE} or {@link #FINE}
     * @return amount per time
     * @source ASCE/EWRI 2-06, Measurement of Oxygen Transfer in Clean Water; from memory
     * @validity efficiency proportional to depth: below 2 m
     */
    @Unit("mol/s")
    public static double standardRate(
            @Unit("m^3/s") double airFlow, @Unit("m") double depth, @Unit("1/m") double efficiency) {
        Bounds.within(airFlow, "m^3/s", 0, 1, "air flow");
        Bounds.within(depth, "m", 0, 20, "depth of the stone");
        Bounds.within(efficiency, "1/m", 0, 0.3, "efficiency per metre");
        return airFlow * OXYGEN_IN_AIR * Math.min(1, efficiency * depth);
    }

    /**
     * Transfer into the tank's water; negative where the water holds more than saturation and the bubbles strip it.
     *
     * <pre>OTR = alpha SOTR (C* - C) / 9.09 mg/L 1.024^(T - 20)</pre>
     *
     * @param standardRate SOTR
     * @param alpha see {@link #ALPHA}
     * @param saturation C* of this seawater
     * @param concentration C
     * @param temperature of the water, ITS-90
     * @return amount per time
     * @source ASCE/EWRI 2-06; from memory. Its factor beta for salt is already in C*
     * @validity 5 to 35 degC
     */
    @Unit("mol/s")
    public static double rate(
            @Unit("mol/s") double standardRate,
            @Unit("1") double alpha,
            @Unit("mol/m^3") double saturation,
            @Unit("mol/m^3") double concentration,
            @Unit("degC") double temperature) {
        Bounds.within(saturation, "mol/m^3", 0, 100, "saturation");
        Bounds.within(concentration, "mol/m^3", 0, 100, "concentration");
        return conductance(standardRate, alpha, temperature) * (saturation - concentration);
    }

    /**
     * The same transfer as a flow of water brought to saturation; over the area of the surface it is a transfer
     * velocity.
     *
     * <pre>alpha SOTR / 9.09 mg/L 1.024^(T - 20)</pre>
     *
     * @param standardRate SOTR
     * @param alpha see {@link #ALPHA}
     * @param temperature of the water, ITS-90
     * @return volume per time
     * @source as {@link #rate}
     * @validity as {@link #rate}
     */
    @Unit("m^3/s")
    public static double conductance(
            @Unit("mol/s") double standardRate, @Unit("1") double alpha, @Unit("degC") double temperature) {
        Bounds.within(standardRate, "mol/s", 0, 1, "standard oxygen transfer rate");
        Bounds.within(alpha, "1", 0, 2, "alpha");
        Bounds.waterTemperature(temperature);
        return alpha * standardRate / STANDARD_SATURATION * Math.pow(PER_KELVIN, temperature - 20);
    }
}
