package org.tidewright.twin.mechanism.light;

import java.util.List;
import org.tidewright.seawater.unit.Unit;
import org.tidewright.twin.contract.View;

/** The lamps that shine on one place. */
public final class Lamps {
    private final Lamp[] lamps;

    public Lamps(List<Lamp> lamps) {
        this.lamps = lamps.toArray(Lamp[]::new);
    }

    /** Photon flux of all of them now. */
    public @Unit("mol/(m^2*s)") double light(View now) {
        double light = 0;
        for (Lamp lamp : lamps) {
            light += lamp.light(now);
        }
        return light;
    }

    /** The same at a time of day by the clocks they begin with, their power on. */
    public @Unit("mol/(m^2*s)") double fullLightAt(@Unit("s") double timeOfDay) {
        double light = 0;
        for (Lamp lamp : lamps) {
            light += lamp.fullLightAt(timeOfDay);
        }
        return light;
    }
}
