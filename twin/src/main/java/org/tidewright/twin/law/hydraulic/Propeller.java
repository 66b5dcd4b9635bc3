package org.tidewright.twin.law.hydraulic;

import org.tidewright.seawater.range.Bounds;
import org.tidewright.seawater.unit.Unit;

/** A pump that lifts nothing and only moves water, at another speed. */
public final class Propeller {
    private Propeller() {}

    /**
     * Power over that at full speed.
     *
     * <pre>P/P_full = n^3</pre>
     *
     * @param speed n, over full speed
     * @return share of the power
     * @source affinity laws of centrifugal and axial pumps
     * @validity turbulent flow; a motor's own losses fall more slowly, so a very slow pump draws a little more
     */
    @Unit("1")
    public static double power(@Unit("1") double speed) {
        double n = Bounds.within(speed, "1", 0, 2, "speed of a pump over its full speed");
        return n * n * n;
    }
}
