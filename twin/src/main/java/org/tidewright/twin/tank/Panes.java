package org.tidewright.twin.tank;

import org.tidewright.seawater.unit.Unit;
import org.tidewright.twin.law.heat.Wall;
import org.tidewright.twin.law.heat.WallConduction;
import org.tidewright.twin.law.structure.Glass;

/** The panes of a vessel: what they weigh and what heat they pass. */
public final class Panes {
    /** Difference to the room at which the films are evaluated; they change little with it. */
    private static final double TYPICAL_DIFFERENCE = 6;

    private Panes() {}

    /** Volume of four panes and a bottom. */
    public static @Unit("m^3") double volume(Vessels.Vessel vessel, org.tidewright.plan.model.Glass glass) {
        double panes = vessel.rimLength() * vessel.rimLevel() * glass.panes().in("m");
        double bottom = vessel.length() * vessel.width() * glass.bottom().in("m");
        return panes + bottom;
    }

    /** Their mass. */
    public static @Unit("kg") double mass(Vessels.Vessel vessel, org.tidewright.plan.model.Glass glass) {
        return Glass.DENSITY * volume(vessel, glass);
    }

    /**
     * Heat passed per kelvin between still water and room.
     *
     * @param wetted height of the water on the panes
     */
    static @Unit("W/K") double conductance(
            Vessels.Vessel vessel,
            org.tidewright.plan.model.Glass glass,
            @Unit("m") double wetted,
            @Unit("degC") double water,
            @Unit("degC") double room) {
        double difference = Math.max(TYPICAL_DIFFERENCE, Math.abs(water - room));
        Wall wall = Wall.ofGlass(wetted, glass.panes().in("m"), Wall.STILL);
        double side = WallConduction.through(wall, water, water - difference).transmittance();
        return side * vessel.rimLength() * wetted
                + WallConduction.BOTTOM_ON_FOAM_AND_WOOD * vessel.length() * vessel.width();
    }
}
