package org.tidewright.twin.mechanism.water;

import org.tidewright.seawater.unit.Unit;
import org.tidewright.twin.contract.Body;
import org.tidewright.twin.contract.Mechanism;
import org.tidewright.twin.contract.Transfers;
import org.tidewright.twin.contract.View;
import org.tidewright.twin.mechanism.power.Supply;

/** Water that a running return pump carries up and that falls back: as much each way, so that levels stay. */
public record Circulation(
        Body upper, Body lower, @Unit("m^3/s") double flow, Supply supply) implements Mechanism {
    @Override
    public void act(View now, Transfers out) {
        if (supply.isOn(now)) {
            out.water(lower, upper, flow);
            out.water(upper, lower, flow);
        }
    }
}
