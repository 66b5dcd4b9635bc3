package org.tidewright.twin.mechanism.heat;

import org.tidewright.seawater.unit.Unit;
import org.tidewright.twin.contract.Body;
import org.tidewright.twin.contract.View;
import org.tidewright.twin.mechanism.air.RoomAir;

/** The air over an open surface as far as evaporation asks. */
public interface AirAbove {
    /** Where the vapour goes. */
    Body body();

    /** Its vapour pressure. */
    @Unit("Pa")
    double vapourPressure(View now);

    /** How fast it moves over the water. */
    @Unit("m/s")
    double speed(View now);

    /** The air of a room whose moisture the twin follows, moved by fans or by none. */
    static AirAbove of(RoomAir room, Breeze breeze) {
        return new AirAbove() {
            @Override
            public Body body() {
                return room.air();
            }

            @Override
            public double vapourPressure(View now) {
                return room.vapourPressure(now);
            }

            @Override
            public double speed(View now) {
                return breeze.speed(now);
            }
        };
    }

    /** Air moved over the water. */
    @FunctionalInterface
    interface Breeze {
        /** No fan. */
        Breeze NONE = now -> 0;

        @Unit("m/s")
        double speed(View now);
    }
}
