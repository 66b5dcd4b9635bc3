package org.tidewright.twin.law.light;

import org.tidewright.seawater.range.Bounds;
import org.tidewright.seawater.unit.Unit;

/**
 * Share of the full light at a time of day. Times of day count from midnight; a photoperiod may run past it. Under 24 h
 * the light is dark outside it; of 24 h with ramps, it dips once a day.
 */
public final class Photoperiod {
    /** One day. */
    @Unit("s")
    public static final double DAY = 86_400;

    private Photoperiod() {}

    /**
     * Light that rises in a straight line, holds and falls as it rose. Its corners are for a stepper to land on: start,
     * start + ramp, start + duration - ramp, start + duration.
     *
     * <pre>share = min(1, s/r, (L - s)/r),  s the time since the start</pre>
     *
     * @param time of day; any whole number of days more or less is the same
     * @param start of day at which the first light shows
     * @param duration L from first to last light
     * @param ramp r of each of the two; at most half of the duration counts; 0 switches
     * @return share, 0 to 1
     * @source geometry
     * @validity lamps on a timer or a straight ramp
     */
    @Unit("1")
    public static double ramped(
            @Unit("s") double time, @Unit("s") double start, @Unit("s") double duration, @Unit("s") double ramp) {
        check(duration, ramp);
        double since = since(time, start);
        if (since >= duration) {
            return 0;
        }
        double slope = effectiveRamp(duration, ramp);
        double nearer = Math.min(since, duration - since);
        return nearer >= slope ? 1 : nearer / slope;
    }

    /**
     * Light that rises and falls as the sun's does.
     *
     * <pre>share = sin(pi s / L),  s the time since the start</pre>
     *
     * @param time of day
     * @param start of day, sunrise
     * @param duration L from sunrise to sunset
     * @return share, 0 to 1
     * @source half sine, the usual stand-in for a clear day
     * @validity low latitudes; lamps that imitate the sun
     */
    @Unit("1")
    public static double halfSine(@Unit("s") double time, @Unit("s") double start, @Unit("s") double duration) {
        check(duration, 0);
        double since = since(time, start);
        return since >= duration ? 0 : Math.max(0, Math.sin(Math.PI * since / duration));
    }

    /**
     * Mean share over a whole day of {@link #ramped}.
     *
     * <pre>(L - r) / 24 h</pre>
     *
     * @param duration L
     * @param ramp r
     * @return share, 0 to 1
     * @source integral
     * @validity exact
     */
    @Unit("1")
    public static double meanOfRamped(@Unit("s") double duration, @Unit("s") double ramp) {
        check(duration, ramp);
        return (duration - effectiveRamp(duration, ramp)) / DAY;
    }

    /**
     * Mean share over a whole day of {@link #halfSine}.
     *
     * <pre>2 L / (pi 24 h)</pre>
     *
     * @param duration L
     * @return share, 0 to 2/pi
     * @source integral
     * @validity exact
     */
    @Unit("1")
    public static double meanOfHalfSine(@Unit("s") double duration) {
        check(duration, 0);
        return 2 * duration / (Math.PI * DAY);
    }

    static void check(double duration, double ramp) {
        Bounds.within(duration, "s", 0, DAY, "photoperiod", "is it in hours?");
        Bounds.within(ramp, "s", 0, DAY, "ramp of the light", "is it in hours?");
    }

    static double effectiveRamp(double duration, double ramp) {
        return Math.min(ramp, duration / 2);
    }

    /** Time since the last start, from 0 to below one day. */
    private static double since(double time, double start) {
        Bounds.within(time, "s", -1e12, 1e12, "time of day");
        Bounds.within(start, "s", -1e12, 1e12, "start of the light");
        double since = (time - start) % DAY;
        if (since < 0) {
            since += DAY;
        }
        return since < DAY ? since : 0; // a sliver before the start rounds up to a whole day
    }
}
