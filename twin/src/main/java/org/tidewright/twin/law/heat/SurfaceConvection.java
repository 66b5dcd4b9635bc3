package org.tidewright.twin.law.heat;

import org.tidewright.seawater.range.Bounds;
import org.tidewright.seawater.unit.Unit;

/** Heat that the air over an open surface takes without evaporating anything, tied to the evaporation by one film. */
public final class SurfaceConvection {
    /** Bowen's constant, 61 to 66 Pa/K; from memory. */
    private static final double BOWEN = 65;

    /** Film of the layered air over water onto which vapour condenses; from memory. */
    private static final double LAYERED_FILM = 2; // W/(m^2*K)

    private SurfaceConvection() {}

    /**
     * Convective heat flow by Bowen's ratio.
     *
     * <pre>q = E Y 65 Pa/K (T - T_a) / (p_w - p_a);  q = 2 W/(m^2 K) (T - T_a) where p_w is not above p_a</pre>
     *
     * @param evaporativeFlux heat flow of evaporation, E Y
     * @param water temperature of the surface, ITS-90
     * @param room temperature of the air, ITS-90
     * @param waterVapourPressure saturation over the seawater
     * @param airVapourPressure partial pressure of vapour in the room
     * @return heat flow per area, positive out of the water
     * @source Bowen 1926, Phys. Rev. 27, 779-787; constant and the film of layered air from memory
     * @validity one atmosphere
     */
    @Unit("W/m^2")
    public static double heatFlux(
            @Unit("W/m^2") double evaporativeFlux,
            @Unit("degC") double water,
            @Unit("degC") double room,
            @Unit("Pa") double waterVapourPressure,
            @Unit("Pa") double airVapourPressure) {
        Bounds.waterTemperature(water);
        Bounds.within(room, "degC", -40, 60, "room temperature");
        Bounds.within(evaporativeFlux, "W/m^2", -1e5, 1e5, "heat flow of evaporation");
        double drive = waterVapourPressure - airVapourPressure;
        Bounds.within(drive, "Pa", -1e5, 1e5, "difference of vapour pressures");
        if (drive <= 0) {
            return LAYERED_FILM * (water - room);
        }
        return evaporativeFlux / drive * BOWEN * (water - room);
    }
}
