package org.tidewright.twin.mechanism.water;

import org.tidewright.seawater.unit.Unit;
import org.tidewright.twin.contract.Body;
import org.tidewright.twin.contract.Mechanism;
import org.tidewright.twin.contract.Transfers;
import org.tidewright.twin.contract.View;
import org.tidewright.twin.mechanism.power.Supply;

/**
 * A circulation pump that follows its programme: all the power it draws ends as heat in the water.
 *
 * @param power at full speed
 */
public record StreamPump(Body water, Body room, @Unit("W") double power, WaveProgramme programme, Supply supply)
        implements Mechanism {
    @Override
    public void act(View now, Transfers out) {
        double share = programme.power(now);
        if (share > 0) {
            supply.draw(now, out, share * power, 1, water, room);
        }
    }
}
