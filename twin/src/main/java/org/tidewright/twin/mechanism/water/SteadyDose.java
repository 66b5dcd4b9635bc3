package org.tidewright.twin.mechanism.water;

import org.tidewright.seawater.unit.Unit;
import org.tidewright.twin.contract.Mechanism;
import org.tidewright.twin.contract.Setting;
import org.tidewright.twin.contract.Transfers;
import org.tidewright.twin.contract.View;

/**
 * A dose spread over a part of the day, or all of it.
 *
 * @param mean setting: mean flow over the whole day, m³/s
 * @param from time of day it begins
 * @param lasts how long it takes
 * @param pouring what a volume of it does
 */
public record SteadyDose(
        String name,
        Setting mean,
        @Unit("s") double from,
        @Unit("s") double lasts,
        Pouring pouring) implements Mechanism {
    private static final double DAY = 86_400;

    /** Pours at a rate. */
    @FunctionalInterface
    public interface Pouring {
        void pour(View now, Transfers out, @Unit("m^3/s") double rate);
    }

    @Override
    public void act(View now, Transfers out) {
        double since = (now.time() - from) % DAY;
        if (lasts >= DAY || (since < 0 ? since + DAY : since) < lasts) {
            pouring.pour(now, out, now.value(mean) * DAY / lasts);
        }
    }
}
