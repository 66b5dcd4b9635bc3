package org.tidewright.twin.mechanism.air;

import org.tidewright.seawater.unit.Unit;
import org.tidewright.twin.contract.Body;
import org.tidewright.twin.contract.Setting;
import org.tidewright.twin.contract.View;

/** The air that a surface or a bubble meets: where what leaves the water goes, and its carbon dioxide. */
public interface AirOver {
    /** Body that gives and takes the gas. */
    Body body();

    /** Partial pressure of carbon dioxide. */
    @Unit("atm")
    double carbonDioxide(View now);

    /** The air of the room. */
    static AirOver of(RoomAir room) {
        return new AirOver() {
            @Override
            public Body body() {
                return room.air();
            }

            @Override
            public double carbonDioxide(View now) {
                return room.carbonDioxide(now);
            }
        };
    }

    /**
     * Air led in from elsewhere, which carries what it takes away back outdoors.
     *
     * @param carbonDioxide setting: its partial pressure, atm
     */
    static AirOver ledIn(Body outdoors, Setting carbonDioxide) {
        return new AirOver() {
            @Override
            public Body body() {
                return outdoors;
            }

            @Override
            public double carbonDioxide(View now) {
                return now.value(carbonDioxide);
            }
        };
    }
}
