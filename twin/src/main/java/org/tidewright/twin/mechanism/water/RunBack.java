package org.tidewright.twin.mechanism.water;

import org.tidewright.seawater.unit.Unit;
import org.tidewright.twin.contract.Body;
import org.tidewright.twin.contract.Parameter;
import org.tidewright.twin.contract.Setting;
import org.tidewright.twin.contract.View;

/**
 * Water in a pipe or a device above the level it stands in: it runs back when nothing holds it any more.
 *
 * @param from the pipe or device
 * @param to where its water goes
 * @param holds setting: 1 while it keeps its water
 * @param time constant of running back
 */
public record RunBack(Body from, Body to, Setting holds, Parameter time) implements WaterWay {
    @Override
    public Kind kind() {
        return Kind.HELD_BACK;
    }

    @Override
    public @Unit("m^3/s") double flow(View now) {
        return now.value(holds) > 0 ? 0 : now.volume(from) / now.value(time);
    }
}
