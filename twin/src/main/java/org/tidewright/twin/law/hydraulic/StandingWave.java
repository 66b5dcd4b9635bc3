package org.tidewright.twin.law.hydraulic;

import org.tidewright.seawater.range.Bounds;
import org.tidewright.seawater.unit.Gravity;
import org.tidewright.seawater.unit.Unit;

/** The sway of a tank's surface that a pulsed pump can build up. */
public final class StandingWave {
    private StandingWave() {}

    /**
     * Period of a standing wave along a rectangular tank.
     *
     * <pre>T = 2 pi / sqrt(g k tanh(k D)),   k = m pi / L</pre>
     *
     * @param length L of the tank in the wave's direction
     * @param depth D of the water
     * @param mode m: 1 for the first, which has one still line in the middle
     * @source linear (Airy) wave theory; in shallow water it is Merian's 2 L / sqrt(g D)
     * @validity amplitude small against depth and length
     * @checkvalue L = 1.20 m, D = 0.55 m, m = 1: 1.312 s
     */
    @Unit("s")
    public static double period(@Unit("m") double length, @Unit("m") double depth, int mode) {
        Bounds.positive(length, "m", "length of the tank");
        Bounds.positive(depth, "m", "depth of the water");
        Bounds.within(mode, "1", 1, 100, "mode of the wave");
        double waveNumber = mode * Math.PI / length;
        return 2 * Math.PI / Math.sqrt(Gravity.STANDARD * waveNumber * Math.tanh(waveNumber * depth));
    }
}
