package org.tidewright.twin.mechanism.water;

import java.util.List;
import org.tidewright.seawater.unit.Unit;
import org.tidewright.twin.contract.Body;
import org.tidewright.twin.contract.Setting;
import org.tidewright.twin.contract.View;
import org.tidewright.twin.contract.Watch;

/**
 * Fresh water pumped from the reservoir while the float in the last section hangs low. It cannot tell why the level is
 * low: a drain that has stopped looks to it like evaporation.
 *
 * @param from the reservoir
 * @param to the last section
 * @param pumpFlow while it runs
 * @param keptLevel the float holds
 * @param powered setting: 1 while there is power
 * @param calls setting: 1 while the float hangs low
 */
public record TopOffPump(
        Body from,
        Body to,
        @Unit("m^3/s") double pumpFlow,
        @Unit("m") double keptLevel,
        Setting powered,
        Setting calls) implements WaterWay {
    /** Travel of a float switch, 5–10 mm; common practice. */
    private static final double FLOAT_TRAVEL = 0.008;

    private static final double LAST_OF_THE_RESERVOIR = 1e-4;

    @Override
    public Kind kind() {
        return Kind.TOP_OFF;
    }

    @Override
    public double flow(View now) {
        return now.value(powered)
                * now.value(calls)
                * pumpFlow
                * WaterWay.fading(now.volume(from), LAST_OF_THE_RESERVOIR);
    }

    @Override
    public List<Watch> watches() {
        return List.of(
                new Watch(
                        "the top-off starts",
                        Watch.Crossing.FALLING,
                        now -> now.value(calls) > 0 ? 1 : now.level(to) - keptLevel + FLOAT_TRAVEL,
                        (now, switches) -> switches.set(calls, 1)),
                new Watch(
                        "the top-off stops",
                        Watch.Crossing.RISING,
                        now -> now.value(calls) > 0 ? now.level(to) - keptLevel : -1,
                        (now, switches) -> switches.set(calls, 0)));
    }
}
