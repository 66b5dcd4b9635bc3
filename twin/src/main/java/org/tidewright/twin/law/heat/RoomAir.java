package org.tidewright.twin.law.heat;

import org.tidewright.seawater.range.Bounds;
import org.tidewright.seawater.unit.TemperatureScale;
import org.tidewright.seawater.unit.Unit;

/** Air as a medium that carries heat away: power laws through the tabulated properties of dry air at one atmosphere. */
public final class RoomAir {
    /** Prandtl number of air near room temperature. */
    @Unit("1")
    public static final double PRANDTL = 0.71;

    private RoomAir() {}

    /**
     * Kinematic viscosity of air.
     *
     * <pre>nu = 1.338e-5 (T / 273.15 K)^1.78</pre>
     *
     * @param temperature ITS-90
     * @return kinematic viscosity
     * @source from memory: a power law through the tables of dry air
     * @validity -20 to 110 degC, within about 1 %
     */
    @Unit("m^2/s")
    public static double kinematicViscosity(@Unit("degC") double temperature) {
        return 1.338e-5 * Math.pow(relative(temperature), 1.78);
    }

    /**
     * Thermal conductivity of air.
     *
     * <pre>k = 0.0241 (T / 273.15 K)^0.85</pre>
     *
     * @param temperature ITS-90
     * @return thermal conductivity
     * @source from memory: a power law through the tables of dry air
     * @validity -20 to 110 degC, within about 1 %
     */
    @Unit("W/(m*K)")
    public static double conductivity(@Unit("degC") double temperature) {
        return 0.0241 * Math.pow(relative(temperature), 0.85);
    }

    private static double relative(double temperature) {
        Bounds.within(temperature, "degC", -40, 110, "air temperature");
        return TemperatureScale.kelvin(temperature) / TemperatureScale.ICE_POINT;
    }
}
