package org.tidewright.twin.law.heat;

import org.tidewright.seawater.density.Density;
import org.tidewright.seawater.heat.SpecificHeat;
import org.tidewright.seawater.range.Bounds;
import org.tidewright.seawater.unit.Unit;

/** Heat it takes to warm a filled tank by one kelvin. */
public final class TankHeatCapacity {
    /** Specific heat of rock; from memory. */
    private static final double ROCK = 850; // J/(kg*K)

    /** Specific heat of glass; from memory. */
    private static final double GLASS = 840; // J/(kg*K)

    private TankHeatCapacity() {}

    /**
     * Heat capacity of water, rock and glass; of the glass one half, since its outer face follows the room.
     *
     * <pre>C = rho V cp + m_rock c_rock + m_glass c_glass / 2</pre>
     *
     * @param volume of the water
     * @param temperature of the water, ITS-90
     * @param practicalSalinity PSS-78
     * @param rock mass of rock and sand, dry
     * @param glass mass of the panes
     * @return heat per kelvin
     * @source sum of parts; specific heats of rock and glass from memory
     * @validity parts that follow the water's temperature within minutes
     */
    @Unit("J/K")
    public static double of(
            @Unit("m^3") double volume,
            @Unit("degC") double temperature,
            @Unit("1") double practicalSalinity,
            @Unit("kg") double rock,
            @Unit("kg") double glass) {
        Bounds.within(volume, "m^3", 0, 1e6, "water volume");
        Bounds.within(rock, "kg", 0, 1e9, "mass of rock");
        Bounds.within(glass, "kg", 0, 1e9, "mass of glass");
        double water = Density.ofSeawater(temperature, practicalSalinity)
                * volume
                * SpecificHeat.ofSeawater(temperature, practicalSalinity);
        return water + rock * ROCK + glass * GLASS / 2;
    }

    /**
     * Time in which the difference to the room falls to 1/e when nothing heats the tank.
     *
     * <pre>tau = C / UA</pre>
     *
     * @param capacity C of the tank
     * @param conductance UA of all its surfaces
     * @return time constant
     * @source Newton's law of cooling
     * @validity surfaces whose heat flow is proportional to the difference: a lid, no evaporation
     */
    @Unit("s")
    public static double timeConstant(@Unit("J/K") double capacity, @Unit("W/K") double conductance) {
        Bounds.within(capacity, "J/K", 0, 1e12, "heat capacity");
        Bounds.within(conductance, "W/K", 1e-9, 1e9, "conductance");
        return capacity / conductance;
    }
}
