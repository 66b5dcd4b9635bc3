package org.tidewright.twin.mechanism.water;

import org.tidewright.seawater.unit.Unit;
import org.tidewright.twin.contract.Body;
import org.tidewright.twin.contract.View;
import org.tidewright.twin.law.hydraulic.Weir;

/**
 * Water over a baffle between two sections of a sump, drowned or free, in either direction.
 *
 * @param crestHeight above the finished floor
 */
public record Baffle(Body from, Body to, @Unit("m") double crestHeight, Weir law) implements WaterWay {
    @Override
    public Kind kind() {
        return Kind.BAFFLE;
    }

    @Override
    public double flow(View now) {
        return Levelling.over(crestHeight, law, from, to, now);
    }
}
