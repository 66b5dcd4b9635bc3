package org.tidewright.twin.mechanism.light;

import org.tidewright.seawater.unit.Unit;
import org.tidewright.twin.contract.Drawn;
import org.tidewright.twin.contract.Routine;
import org.tidewright.twin.contract.Setting;
import org.tidewright.twin.contract.View;
import org.tidewright.twin.law.light.Photoperiod;
import org.tidewright.twin.mechanism.power.Supply;

/**
 * A lamp with its clock: dark, an even rise, full light, an even fall.
 *
 * @param starts setting: time of day it begins to shine, s
 * @param daily setting: how long it shines, s
 * @param strength setting: share of its full light
 * @param ramp of rise and of fall each
 * @param full photon flux on what grows below, mol/(m²·s)
 */
public record Lamp(
        String name,
        Setting starts,
        Setting daily,
        Setting strength,
        @Unit("s") double ramp,
        Drawn full,
        Supply supply) {
    private static final double DAY = 86_400;

    /** Photon flux now. */
    public @Unit("mol/(m^2*s)") double light(View now) {
        return full.in(now) * share(now);
    }

    /** Share of its full light and power now. */
    public @Unit("1") double share(View now) {
        if (!supply.isOn(now)) {
            return 0;
        }
        double lasts = Math.min(DAY, now.value(daily));
        return now.value(strength) * Photoperiod.ramped(now.time(), now.value(starts), lasts, ramp);
    }

    /** Photon flux at a time of day by the clock the lamp begins with, its power on. */
    public @Unit("mol/(m^2*s)") double fullLightAt(@Unit("s") double timeOfDay) {
        double lasts = Math.min(DAY, daily.initial());
        return full.usual() * strength.initial() * Photoperiod.ramped(timeOfDay, starts.initial(), lasts, ramp);
    }

    /** Stops the run where the light jumps and where a ramp begins or ends. */
    public Routine corners() {
        Routine.Next corners = (time, now) -> {
            double lasts = Math.min(DAY, now.value(daily));
            double start = now.value(starts);
            double end = start + lasts;
            double slope = Math.min(ramp, lasts / 2);
            double next = Double.POSITIVE_INFINITY;
            for (double corner : new double[] {start, start + slope, end - slope, end}) {
                next = Math.min(next, Routine.daily(corner, 1).after(time, now));
            }
            return next;
        };
        String changes = name + " changes";
        return ramp > 0 ? Routine.bend(changes, corners) : Routine.quiet(changes, corners);
    }
}
