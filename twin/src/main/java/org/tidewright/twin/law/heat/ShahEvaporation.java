package org.tidewright.twin.law.heat;

import org.tidewright.seawater.heat.MoistAir;
import org.tidewright.seawater.range.Bounds;
import org.tidewright.seawater.unit.Unit;

/** Evaporation from an undisturbed surface into still air, driven by the lightness of the moist air over the water. */
public final class ShahEvaporation {
    private static final double SECONDS_PER_HOUR = 3600;

    private ShahEvaporation() {}

    /**
     * Water that leaves the surface, the greater of natural convection and of the room's own air movement.
     *
     * <pre>
     * E1 = C rho_w (rho_r - rho_w)^(1/3) (W_w - W_r) kg/(m^2 h),  C = 35, 40 where rho_r - rho_w is below 0.02 kg/m^3
     * E2 = 5e-5 (p_w - p_r) kg/(m^2 h), p in Pa
     * </pre>
     *
     * rho is dry air per volume of moist air, W the humidity ratio, at the surface (w) and in the room (r). Where the
     * air over the water is the heavier, nothing rises and E2 alone remains. Where the room holds more vapour than the
     * water gives off, the result is E2, negative: vapour condenses on the water.
     *
     * @param water temperature of the surface, ITS-90
     * @param waterVapourPressure saturation over the seawater
     * @param room temperature of the air, ITS-90
     * @param airVapourPressure partial pressure of vapour in the room
     * @param pressure total pressure of the air
     * @return mass per area and time
     * @source Shah 2012, 2014, ASHRAE Transactions, unoccupied pools; constants from memory
     * @validity undisturbed surface, no fan
     */
    @Unit("kg/(m^2*s)")
    public static double massFlux(
            @Unit("degC") double water,
            @Unit("Pa") double waterVapourPressure,
            @Unit("degC") double room,
            @Unit("Pa") double airVapourPressure,
            @Unit("Pa") double pressure) {
        Bounds.waterTemperature(water);
        double forced = 5e-5 * (waterVapourPressure - airVapourPressure);
        double overWater = MoistAir.dryAirDensity(water, waterVapourPressure, pressure);
        double lift = MoistAir.dryAirDensity(room, airVapourPressure, pressure) - overWater;
        double wetter = MoistAir.humidityRatio(waterVapourPressure, pressure)
                - MoistAir.humidityRatio(airVapourPressure, pressure);
        if (lift <= 0 || wetter <= 0) {
            return forced / SECONDS_PER_HOUR;
        }
        double natural = (lift < 0.02 ? 40 : 35) * overWater * Math.cbrt(lift) * wetter;
        return Math.max(natural, forced) / SECONDS_PER_HOUR;
    }
}
