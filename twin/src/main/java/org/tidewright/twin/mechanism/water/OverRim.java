package org.tidewright.twin.mechanism.water;

import java.util.List;
import org.tidewright.seawater.unit.Unit;
import org.tidewright.twin.contract.Body;
import org.tidewright.twin.contract.Mechanism;
import org.tidewright.twin.contract.Transfers;
import org.tidewright.twin.contract.View;
import org.tidewright.twin.contract.Watch;

/**
 * A vessel that is given more water than it holds: what stands above its rim is on the floor within minutes. {@link RimSpill}
 * has the seconds of it.
 *
 * @param floor what the room gets
 * @param full water up to the rim
 */
public record OverRim(Body water, Body floor, @Unit("m^3") double full) implements Mechanism {
    /** Millimetres of head along a rim carry off what any pump brings: the surplus is gone in minutes; ours. */
    private static final double MINUTES = 120;

    private static final String AT_RIM = " comes to its rim";

    @Override
    public String name() {
        return "the " + water.name() + " runs over its rim";
    }

    @Override
    public void act(View now, Transfers out) {
        double surplus = now.volume(water) - full;
        if (surplus > 0) {
            out.water(water, floor, surplus / MINUTES);
        }
    }

    @Override
    public List<Watch> watches() {
        return List.of(
                Watch.noting("the " + water.name() + AT_RIM, Watch.Crossing.RISING, now -> now.volume(water) - full));
    }

    /** Whether an event is that of a vessel that comes to its rim. */
    public static boolean isEvent(String event) {
        return event.endsWith(AT_RIM);
    }
}
