package org.tidewright.seawater.heat;

import org.tidewright.seawater.range.Bounds;
import org.tidewright.seawater.unit.TemperatureScale;
import org.tidewright.seawater.unit.Unit;

/** Water vapour in the air above the water, as a mixture of ideal gases. */
public final class MoistAir {
    /** One standard atmosphere. */
    @Unit("Pa")
    public static final double STANDARD_PRESSURE = 101325;

    /** Molar mass of water over that of dry air, 18.01528 / 28.9647 (ASHRAE Fundamentals gives 0.621945). */
    private static final double MASS_RATIO = 0.621945;

    /** Specific gas constant of dry air, 8.314462618 J/(mol K) / 28.9647 g/mol, in J/(kg K). */
    private static final double DRY_AIR_CONSTANT = 287.055;

    private MoistAir() {}

    /**
     * Partial pressure of water vapour in air of a known relative humidity.
     *
     * <pre>p_v = RH p_sat(t)</pre>
     *
     * @param temperature of the air, ITS-90
     * @param relativeHumidity over liquid water, as a share: 0 dry, 1 saturated
     * @return partial pressure of water vapour
     * @source definition of relative humidity over liquid water, World Meteorological Organization
     * @validity as {@link VapourPressure#ofPureWater}
     */
    @Unit("Pa")
    public static double vapourPressure(@Unit("degC") double temperature, @Unit("1") double relativeHumidity) {
        Bounds.within(relativeHumidity, "1", 0, 1, "relative humidity");
        return relativeHumidity * VapourPressure.ofPureWater(temperature);
    }

    /**
     * Relative humidity of air that holds vapour of a known partial pressure; above 1 the air is supersaturated.
     *
     * @param temperature of the air, ITS-90
     * @param vapourPressure partial pressure of water vapour
     * @return share of saturation over liquid water
     * @source definition of relative humidity over liquid water, World Meteorological Organization
     * @validity as {@link VapourPressure#ofPureWater}
     */
    @Unit("1")
    public static double relativeHumidity(@Unit("degC") double temperature, @Unit("Pa") double vapourPressure) {
        Bounds.within(vapourPressure, "Pa", 0, 1e6, "vapour pressure");
        return vapourPressure / VapourPressure.ofPureWater(temperature);
    }

    /**
     * Mass of vapour carried by each kilogram of dry air.
     *
     * <pre>W = 0.621945 p_v / (p - p_v)</pre>
     *
     * @param vapourPressure partial pressure of water vapour, below the total
     * @param pressure total pressure of the air
     * @return kilograms of vapour per kilogram of dry air
     * @source ASHRAE Handbook, Fundamentals 2009, ch. 1
     * @validity ideal gases; within 0.5 % near room conditions
     */
    @Unit("kg/kg")
    public static double humidityRatio(@Unit("Pa") double vapourPressure, @Unit("Pa") double pressure) {
        share(vapourPressure, pressure);
        return MASS_RATIO * vapourPressure / (pressure - vapourPressure);
    }

    /**
     * Mass of dry air in a volume of moist air.
     *
     * <pre>rho_a = (p - p_v) / (R_a T)</pre>
     *
     * @param temperature of the air, ITS-90
     * @param vapourPressure partial pressure of water vapour, below the total
     * @param pressure total pressure of the air
     * @return kilograms of dry air per cubic metre
     * @source ideal gas law with the specific constant of dry air, 287.055 J/(kg K)
     * @validity ideal gases; within 0.1 % near room conditions
     */
    @Unit("kg/m^3")
    public static double dryAirDensity(
            @Unit("degC") double temperature, @Unit("Pa") double vapourPressure, @Unit("Pa") double pressure) {
        share(vapourPressure, pressure);
        return (pressure - vapourPressure) / (DRY_AIR_CONSTANT * kelvin(temperature));
    }

    /**
     * Mass of vapour in a volume of air, the absolute humidity.
     *
     * <pre>rho_v = p_v / (R_v T),  R_v = R_a / 0.621945</pre>
     *
     * @param temperature of the air, ITS-90
     * @param vapourPressure partial pressure of water vapour
     * @return kilograms of vapour per cubic metre
     * @source ideal gas law with the specific constant of water vapour, 461.5 J/(kg K)
     * @validity ideal gases; within 0.1 % near room conditions
     */
    @Unit("kg/m^3")
    public static double vapourDensity(@Unit("degC") double temperature, @Unit("Pa") double vapourPressure) {
        Bounds.within(vapourPressure, "Pa", 0, 1e6, "vapour pressure");
        return vapourPressure * MASS_RATIO / (DRY_AIR_CONSTANT * kelvin(temperature));
    }

    private static double kelvin(double temperature) {
        Bounds.within(temperature, "degC", -40, 110, "air temperature");
        return TemperatureScale.kelvin(temperature);
    }

    private static void share(double vapourPressure, double pressure) {
        Bounds.within(pressure, "Pa", 20_000, 200_000, "air pressure");
        Bounds.within(vapourPressure, "Pa", 0, Math.nextDown(pressure), "vapour pressure below the air pressure");
    }
}
