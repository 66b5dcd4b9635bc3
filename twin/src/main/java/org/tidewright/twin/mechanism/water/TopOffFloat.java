package org.tidewright.twin.mechanism.water;

import org.jspecify.annotations.Nullable;
import org.tidewright.seawater.unit.Unit;
import org.tidewright.twin.contract.Body;
import org.tidewright.twin.contract.Mechanism;
import org.tidewright.twin.contract.Setting;
import org.tidewright.twin.contract.Transfers;
import org.tidewright.twin.contract.View;

/**
 * Top-off from a reservoir by a float switch, averaged over its clicks: the pump's share of time rises evenly as the water
 * that the switch watches falls through its play, or through what the pump moves in half an hour where that is more; the
 * level is then right to a few hundredths of a litre. It ends as the reservoir runs dry.
 *
 * @param full water in {@code watched} at which the float stops the pump
 * @param play water between the float's two positions
 * @param flow of the pump
 * @param state setting: 1 in order, 0 stuck off, above 1 stuck on
 * @param mains setting: 1 while its pump has power; null where a hand pours
 */
public record TopOffFloat(
        Body reservoir,
        Body watched,
        @Unit("m^3") double full,
        @Unit("m^3") double play,
        @Unit("m^3/s") double flow,
        Setting state,
        @Nullable Setting mains)
        implements Mechanism {
    /** Water the pump cannot draw evenly any more. */
    private static final double LAST_OF_RESERVOIR = 0.2e-3;

    /** Over which the clicks are averaged. */
    private static final double AVERAGED = 1800;

    @Override
    public String name() {
        return "top-off";
    }

    @Override
    public void act(View now, Transfers out) {
        if (mains != null && now.value(mains) <= 0) {
            return;
        }
        double left = Math.max(0, Math.min(1, now.volume(reservoir) / LAST_OF_RESERVOIR));
        double working = now.value(state);
        double called = working > 1
                ? 1
                : working * Math.max(0, Math.min(1, (full - now.volume(watched)) / Math.max(play, flow * AVERAGED)));
        if (left * called > 0) {
            out.water(reservoir, watched, left * called * flow);
        }
    }
}
