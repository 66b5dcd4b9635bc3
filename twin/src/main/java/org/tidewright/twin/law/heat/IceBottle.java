package org.tidewright.twin.law.heat;

import org.tidewright.seawater.range.Bounds;
import org.tidewright.seawater.unit.Unit;

/** A closed bottle of frozen fresh water as a cooler; closed, because melt water would thin the sea. */
public final class IceBottle {
    private static final double HEAT_OF_FUSION = 333.6e3; // J/kg, from memory
    private static final double SPECIFIC_HEAT_OF_ICE = 2050; // J/(kg*K), from memory
    private static final double SPECIFIC_HEAT_OF_WATER = 4187; // J/(kg*K), from memory

    private IceBottle() {}

    /**
     * Heat a bottle takes up from the freezer's temperature until it is as warm as the tank.
     *
     * <pre>Q = m [c_ice (0 - t_ice) + L + c_water t]</pre>
     *
     * @param mass of the ice
     * @param ice temperature of the freezer, at most 0 degC
     * @param water temperature of the tank, at least 0 degC
     * @return heat taken up
     * @source heat balance; constants from memory
     * @validity the bottle stays in until it has warmed
     */
    @Unit("J")
    public static double heatTakenUp(@Unit("kg") double mass, @Unit("degC") double ice, @Unit("degC") double water) {
        Bounds.within(mass, "kg", 0, 1e6, "mass of ice");
        Bounds.within(ice, "degC", -60, 0, "temperature of the ice");
        Bounds.within(water, "degC", 0, 60, "water temperature");
        return mass * (SPECIFIC_HEAT_OF_ICE * -ice + HEAT_OF_FUSION + SPECIFIC_HEAT_OF_WATER * water);
    }
}
