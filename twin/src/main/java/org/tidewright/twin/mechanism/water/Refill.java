package org.tidewright.twin.mechanism.water;

import org.tidewright.seawater.unit.Unit;
import org.tidewright.twin.contract.Body;
import org.tidewright.twin.contract.Parameter;
import org.tidewright.twin.contract.Setting;
import org.tidewright.twin.contract.View;

/**
 * A pipe or device filling again after it ran empty.
 *
 * @param from where its water comes from
 * @param to the pipe or device
 * @param full what it holds while it runs
 * @param drawLevel level in {@code from} below which it cannot fill
 * @param runs setting: 1 while it runs
 * @param time constant of filling
 */
public record Refill(
        Body from,
        Body to,
        @Unit("m^3") double full,
        @Unit("m") double drawLevel,
        Setting runs,
        Parameter time) implements WaterWay {
    private static final double GULPING_DEPTH = 0.01;

    @Override
    public Kind kind() {
        return Kind.HELD_BACK;
    }

    @Override
    public @Unit("m^3/s") double flow(View now) {
        double missing = now.value(runs) * full - now.volume(to);
        return missing <= 0
                ? 0
                : missing / now.value(time) * WaterWay.fading(now.level(from) - drawLevel, GULPING_DEPTH);
    }
}
