package org.tidewright.twin.tank;

import org.tidewright.seawater.unit.Unit;
import org.tidewright.twin.law.heat.Wall;
import org.tidewright.twin.law.heat.WallConduction;
import org.tidewright.twin.law.heat.WallFit;
import org.tidewright.twin.law.structure.Glass;

/** The panes of a vessel: what they weigh and what heat they pass. */
public final class Panes {
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

    /** How well the upright panes pass heat, with still water behind them up to a height. */
    static WallFit transmittance(org.tidewright.plan.model.Glass glass, @Unit("m") double wetted) {
        return WallFit.of(Wall.ofGlass(wetted, glass.panes().in("m"), Wall.STILL));
    }

    /** Heat the bottom passes per kelvin. */
    static @Unit("W/K") double bottomConductance(Vessels.Vessel vessel) {
        return WallConduction.BOTTOM_ON_FOAM_AND_WOOD * vessel.length() * vessel.width();
    }
}
