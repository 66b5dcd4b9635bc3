package org.tidewright.twin.mechanism.heat;

import org.tidewright.seawater.unit.Unit;
import org.tidewright.twin.contract.Body;
import org.tidewright.twin.contract.Mechanism;
import org.tidewright.twin.contract.Parameter;
import org.tidewright.twin.contract.Transfers;
import org.tidewright.twin.contract.View;
import org.tidewright.twin.law.heat.WallFit;

/**
 * Heat through panes and bottom.
 *
 * @param pane transmittance of the upright panes
 * @param wetted area of them
 * @param bottom U A of the bottom
 * @param factor by which the sum is off
 */
public record WallLoss(
        Body water,
        Body room,
        WallFit pane,
        @Unit("m^2") double wetted,
        @Unit("W/K") double bottom,
        Parameter factor) implements Mechanism {
    @Override
    public void act(View now, Transfers out) {
        double inside = now.temperature(water);
        double outside = now.temperature(room);
        double conductance = wetted * pane.transmittance(inside, outside) + bottom;
        out.heat(water, room, now.value(factor) * conductance * (inside - outside));
    }
}
