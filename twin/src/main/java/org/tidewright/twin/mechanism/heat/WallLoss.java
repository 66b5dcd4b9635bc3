package org.tidewright.twin.mechanism.heat;

import org.tidewright.seawater.unit.Unit;
import org.tidewright.twin.contract.Body;
import org.tidewright.twin.contract.Mechanism;
import org.tidewright.twin.contract.Parameter;
import org.tidewright.twin.contract.Transfers;
import org.tidewright.twin.contract.View;

/**
 * Heat through panes and bottom.
 *
 * @param conductance sum of U A, computed from the panes
 * @param factor by which that is off
 */
public record WallLoss(Body water, Body room, @Unit("W/K") double conductance, Parameter factor) implements Mechanism {
    @Override
    public void act(View now, Transfers out) {
        out.heat(water, room, now.value(factor) * conductance * (now.temperature(water) - now.temperature(room)));
    }
}
