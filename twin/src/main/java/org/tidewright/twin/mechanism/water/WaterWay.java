package org.tidewright.twin.mechanism.water;

import org.tidewright.seawater.unit.Unit;
import org.tidewright.twin.contract.Body;
import org.tidewright.twin.contract.Mechanism;
import org.tidewright.twin.contract.Transfers;
import org.tidewright.twin.contract.View;

/** A mechanism that moves water from one body to another. */
public interface WaterWay extends Mechanism {
    /** What carries the water. */
    enum Kind {
        WEIR,
        DRAIN,
        RETURN,
        BACK_SIPHON,
        BAFFLE,
        HELD_BACK,
        TOP_OFF,
        SPILL
    }

    Kind kind();

    Body from();

    Body to();

    /** Flow at this moment, positive from {@link #from()} to {@link #to()}. */
    @Unit("m^3/s")
    double flow(View now);

    @Override
    default void act(View now, Transfers out) {
        out.water(from(), to(), flow(now));
    }

    /**
     * Lets a flow die out over the last of the water it draws from, so that no body runs below empty.
     *
     * @param depth water over the place it is drawn from
     * @param over depth within which the flow fades
     */
    static @Unit("1") double fading(@Unit("m") double depth, @Unit("m") double over) {
        return Math.max(0, Math.min(1, depth / over));
    }
}
