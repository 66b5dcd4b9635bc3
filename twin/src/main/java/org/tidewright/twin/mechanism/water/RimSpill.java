package org.tidewright.twin.mechanism.water;

import java.util.List;
import org.tidewright.seawater.unit.Unit;
import org.tidewright.twin.contract.Body;
import org.tidewright.twin.contract.View;
import org.tidewright.twin.contract.Watch;
import org.tidewright.twin.law.hydraulic.Weir;

/**
 * Water over the rim of a vessel on to the floor.
 *
 * @param rimHeight above the vessel's inside bottom
 * @param law of the rim as a crest
 */
public record RimSpill(Body from, Body to, @Unit("m") double rimHeight, Weir law) implements WaterWay {
    @Override
    public Kind kind() {
        return Kind.SPILL;
    }

    @Override
    public double flow(View now) {
        double head = now.level(from) - rimHeight;
        return head <= 0 ? 0 : law.flow(head);
    }

    @Override
    public List<Watch> watches() {
        return List.of(Watch.noting(event(from.name()), Watch.Crossing.RISING, now -> now.level(from) - rimHeight));
    }

    /** Name of the event that a vessel reaches its rim. */
    public static String event(String vessel) {
        return vessel + " over its rim";
    }
}
