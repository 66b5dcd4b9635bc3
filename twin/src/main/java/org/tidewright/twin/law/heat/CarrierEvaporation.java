package org.tidewright.twin.law.heat;

import org.tidewright.seawater.range.Bounds;
import org.tidewright.seawater.unit.Unit;

/**
 * Evaporation from an open surface by the equation of pool engineering, scaled by how much the surface is stirred. The
 * default, because one factor can be fitted to the keeper's own top-off.
 */
public final class CarrierEvaporation {
    /** Still surface; common practice (0.50 to 0.57 measured over unoccupied pools). */
    @Unit("1")
    public static final double STILL = 0.5;

    /** Rippled display with an overflow; common practice (0.74 measured on undisturbed pools, Smith et al. 1998). */
    @Unit("1")
    public static final double RIPPLED = 0.7;

    /** Strongly agitated; common practice. Spray, skimmer and drain splash may bring it to 1.5. */
    @Unit("1")
    public static final double AGITATED = 1.0;

    private CarrierEvaporation() {}

    /**
     * Heat that evaporation takes per area and pascal of vapour-pressure difference.
     *
     * <pre>K = Fa (0.089 + 0.0782 v)</pre>
     *
     * @param activity Fa, 0.5 still to 1.5 splashing
     * @param airSpeed over the surface; 0 in a room without a fan
     * @return heat flow per area and pascal
     * @source Carrier's equation, ASHRAE Handbook, HVAC Applications, natatoriums; in inch-pound units 95 + 0.425 v
     * @validity v 0 to 1.5 m/s
     */
    @Unit("W/(m^2*Pa)")
    public static double heatPerPascal(@Unit("1") double activity, @Unit("m/s") double airSpeed) {
        Bounds.within(activity, "1", 0, 5, "activity factor");
        Bounds.within(airSpeed, "m/s", 0, 20, "air speed");
        return activity * (0.089 + 0.0782 * airSpeed);
    }

    /**
     * Water that leaves the surface; negative when the air holds more vapour than the water gives off and condenses on
     * it.
     *
     * <pre>E = Fa (0.089 + 0.0782 v) (p_w - p_a) / Y</pre>
     *
     * @param activity Fa, 0.5 still to 1.5 splashing
     * @param airSpeed over the surface
     * @param waterVapourPressure saturation over the seawater at the surface's temperature
     * @param airVapourPressure partial pressure of vapour in the room
     * @param latentHeat of evaporation
     * @return mass per area and time
     * @source Carrier's equation, ASHRAE Handbook, HVAC Applications, natatoriums
     * @validity v 0 to 1.5 m/s; evaporation. For condensation the same film is assumed
     */
    @Unit("kg/(m^2*s)")
    public static double massFlux(
            @Unit("1") double activity,
            @Unit("m/s") double airSpeed,
            @Unit("Pa") double waterVapourPressure,
            @Unit("Pa") double airVapourPressure,
            @Unit("J/kg") double latentHeat) {
        Bounds.within(waterVapourPressure, "Pa", 0, 1e5, "vapour pressure of the water");
        Bounds.within(airVapourPressure, "Pa", 0, 1e5, "vapour pressure of the air");
        Bounds.within(latentHeat, "J/kg", 1e6, 4e6, "latent heat of evaporation");
        return heatPerPascal(activity, airSpeed) * (waterVapourPressure - airVapourPressure) / latentHeat;
    }
}
