package org.tidewright.twin.law.heat;

import org.tidewright.seawater.range.Bounds;
import org.tidewright.seawater.unit.Unit;

/** A room as one heat capacity behind one conductance, enough to say how fast it follows the weather in an outage. */
public final class RoomHeat {
    private RoomHeat() {}

    /**
     * Conductance between room and outdoors, through the walls and by changing the air.
     *
     * <pre>H = sum(U A) + 0.34 Wh/(m^3 K) V n</pre>
     *
     * @param walls sum of U A of everything that faces outdoors
     * @param volume of the room
     * @param airChanges per hour, 0.3 to 1 in homes
     * @return heat flow per kelvin
     * @source EN 12831, ventilation loss; from memory
     * @validity air near 20 degC
     */
    @Unit("W/K")
    public static double conductance(
            @Unit("W/K") double walls, @Unit("m^3") double volume, @Unit("1/h") double airChanges) {
        Bounds.within(walls, "W/K", 0, 1e6, "conductance of the walls");
        Bounds.within(volume, "m^3", 0, 1e6, "volume of the room");
        Bounds.within(airChanges, "1/h", 0, 100, "air changes");
        return walls + 0.34 * volume * airChanges;
    }

    /**
     * How fast the room warms.
     *
     * <pre>dTr/dt = [H (T_out - Tr) + Q] / C_r</pre>
     *
     * @param capacity C_r of the room
     * @param conductance H to the outdoors
     * @param room temperature, ITS-90
     * @param outdoors temperature, ITS-90
     * @param heat Q, everything given off inside that warms air and walls: devices, people, the sensible loss of the
     *     tank. Vapour from the tank leaves with the air and warms nothing
     * @return rate of temperature
     * @source heat balance of one capacity
     * @validity after the first hour; air alone answers faster
     */
    @Unit("K/s")
    public static double rate(
            @Unit("J/K") double capacity,
            @Unit("W/K") double conductance,
            @Unit("degC") double room,
            @Unit("degC") double outdoors,
            @Unit("W") double heat) {
        Bounds.within(capacity, "J/K", 1, 1e12, "heat capacity of the room");
        Bounds.within(conductance, "W/K", 0, 1e7, "conductance of the room");
        Bounds.within(room, "degC", -60, 70, "room temperature");
        Bounds.within(outdoors, "degC", -60, 70, "outdoor temperature");
        Bounds.within(heat, "W", -1e7, 1e7, "heat given off in the room");
        return (conductance * (outdoors - room) + heat) / capacity;
    }

    /**
     * Time in which an unheated room loses 1 - 1/e of its difference to the outdoors.
     *
     * <pre>tau = C_r / H</pre>
     *
     * @param capacity C_r of the room
     * @param conductance H to the outdoors
     * @return time constant
     * @source heat balance of one capacity
     * @validity as {@link #rate}
     */
    @Unit("s")
    public static double timeConstant(@Unit("J/K") double capacity, @Unit("W/K") double conductance) {
        Bounds.within(capacity, "J/K", 1, 1e12, "heat capacity of the room");
        Bounds.within(conductance, "W/K", 1e-9, 1e7, "conductance of the room");
        return capacity / conductance;
    }

    /**
     * Humidity that evaporation adds to a room in the long run if it does not slow itself.
     *
     * <pre>dW = E / (rho V n)</pre>
     *
     * @param evaporation from all surfaces
     * @param volume of the room
     * @param airChanges per hour
     * @param airDensity of the room's air, near 1.19 kg/m^3
     * @return kilograms of vapour per kilogram of air above the humidity outdoors
     * @source mass balance of the room's vapour
     * @validity steady state, vapour neither bound nor condensed
     */
    @Unit("kg/kg")
    public static double moistureGain(
            @Unit("kg/s") double evaporation,
            @Unit("m^3") double volume,
            @Unit("1/h") double airChanges,
            @Unit("kg/m^3") double airDensity) {
        Bounds.within(evaporation, "kg/s", -10, 10, "evaporation");
        Bounds.within(volume, "m^3", 1e-3, 1e6, "volume of the room");
        Bounds.within(airChanges, "1/h", 1e-6, 100, "air changes");
        Bounds.within(airDensity, "kg/m^3", 0.5, 2, "density of air");
        return evaporation / (airDensity * volume * airChanges / 3600);
    }
}
