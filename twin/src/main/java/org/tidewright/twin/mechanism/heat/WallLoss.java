package org.tidewright.twin.mechanism.heat;

import org.tidewright.seawater.unit.Unit;
import org.tidewright.twin.contract.Body;
import org.tidewright.twin.contract.Mechanism;
import org.tidewright.twin.contract.Parameter;
import org.tidewright.twin.contract.Transfers;
import org.tidewright.twin.contract.View;
import org.tidewright.twin.law.heat.WallFit;

/**
 * Heat through panes and bottom, as far as the water wets them.
 *
 * @param pane transmittance of the upright panes
 * @param around length of them along the rim
 * @param rim level at which they end
 * @param bottom U A of the bottom
 * @param factor by which the sum is off
 */
public record WallLoss(
        Body water,
        Body room,
        WallFit pane,
        @Unit("m") double around,
        @Unit("m") double rim,
        @Unit("W/K") double bottom,
        Parameter factor)
        implements Mechanism {
    @Override
    public void act(View now, Transfers out) {
        double inside = now.temperature(water);
        double outside = now.temperature(room);
        double wetted = around * Math.min(rim, now.level(water));
        double conductance = wetted * pane.transmittance(inside, outside) + bottom;
        out.heat(water, room, now.value(factor) * conductance * (inside - outside));
    }
}
