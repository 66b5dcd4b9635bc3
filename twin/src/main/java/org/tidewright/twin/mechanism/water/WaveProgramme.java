package org.tidewright.twin.mechanism.water;

import java.util.List;
import org.tidewright.seawater.unit.Unit;
import org.tidewright.twin.contract.Routine;
import org.tidewright.twin.contract.Setting;
import org.tidewright.twin.contract.View;
import org.tidewright.twin.law.hydraulic.Propeller;

/**
 * How fast a circulation pump runs by its clock: full speed outside the parts of its programme.
 *
 * @param factor setting: on the speed of the programme, which is never above full
 * @param parts of every day, which do not overlap
 */
public record WaveProgramme(Setting factor, List<Part> parts) {
    private static final double DAY = 86_400;

    /**
     * Hours of every day.
     *
     * @param from time of day it begins
     * @param speed over full speed
     * @param running share of the time it turns at all, in pulses too short to feel in the mean
     */
    public record Part(
            @Unit("s") double from,
            @Unit("s") double lasts,
            @Unit("1") double speed,
            @Unit("1") double running) {
        private boolean holds(double time) {
            double since = (time - from) % DAY;
            return (since < 0 ? since + DAY : since) < lasts;
        }
    }

    public WaveProgramme {
        parts = List.copyOf(parts);
    }

    /** Mean power now over that at full speed. */
    public @Unit("1") double power(View now) {
        double speed = now.value(factor);
        double running = 1;
        for (int i = 0; i < parts.size(); i++) {
            Part part = parts.get(i);
            if (part.holds(now.time())) {
                speed *= part.speed();
                running = part.running();
                break;
            }
        }
        return running * Propeller.power(Math.min(1, speed));
    }

    /** Stops the run where the speed jumps. */
    public Routine jumps(String pump) {
        return Routine.quiet(pump + " changes its speed", (time, now) -> {
            double next = Double.POSITIVE_INFINITY;
            for (Part part : parts) {
                next = Math.min(next, Routine.daily(part.from(), 1).after(time, now));
                next = Math.min(
                        next, Routine.daily(part.from() + part.lasts(), 1).after(time, now));
            }
            return next;
        });
    }
}
