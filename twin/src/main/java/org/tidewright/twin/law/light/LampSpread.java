package org.tidewright.twin.law.light;

import org.tidewright.seawater.range.Bounds;
import org.tidewright.seawater.unit.Unit;

/**
 * How the light of a wide, even lamp falls off below it and towards its edges, by geometry alone: walls that throw light
 * back, lenses that bundle it and rock that shades are not here.
 */
public final class LampSpread {
    /** Refractive index of seawater for the light plants use; Quan and Fry 1995 have 1.340 at 550 nm, from memory. */
    @Unit("1")
    public static final double REFRACTIVE_INDEX = 1.34;

    private LampSpread() {}

    /**
     * Share of the light that a level place gets of what it would get right under an endless lamp.
     *
     * <pre>
     * F = sum over the four parts the place divides the lamp in, of
     * 1/(2 pi) [A/sqrt(1 + A^2) atan(B/sqrt(1 + A^2)) + B/sqrt(1 + B^2) atan(A/sqrt(1 + B^2))]
     * A = a/c, B = b/c
     * </pre>
     *
     * @param left a of the parts to the left of the place
     * @param right a of those to its right
     * @param front b of the parts before it
     * @param back b of those behind it
     * @param distance c from the lamp, {@link #apparentDistance}
     * @return share, 0 to 1; 1 under the lamp's middle close to it
     * @source configuration factor from a small area to a parallel rectangle, its normal through a corner: Howell,
     *     Catalog of Radiation Heat Transfer Configuration Factors, B-3; the same as equation A4 of BR 187 (2014)
     * @validity a lamp that shines alike into all directions below it; a place under it, not beside it
     */
    @Unit("1")
    public static double under(
            @Unit("m") double left,
            @Unit("m") double right,
            @Unit("m") double front,
            @Unit("m") double back,
            @Unit("m") double distance) {
        Bounds.within(distance, "m", 1e-6, 100, "distance from the lamp");
        return part(left, front, distance)
                + part(left, back, distance)
                + part(right, front, distance)
                + part(right, back, distance);
    }

    private static double part(double along, double across, double distance) {
        double a = Bounds.within(along, "m", 0, 1000, "part of the lamp beside the place") / distance;
        double b = Bounds.within(across, "m", 0, 1000, "part of the lamp beside the place") / distance;
        double ofA = Math.sqrt(1 + a * a);
        double ofB = Math.sqrt(1 + b * b);
        return (a / ofA * Math.atan(b / ofA) + b / ofB * Math.atan(a / ofB)) / (2 * Math.PI);
    }

    /**
     * Distance at which a lamp in air would light a place as it does through water, which bends its rays together.
     *
     * <pre>c = h + z/n</pre>
     *
     * @param above h of the lamp over the water
     * @param depth z of the place
     * @return distance
     * @source Snell's law for rays near the vertical
     * @validity steep rays; slanting ones are bent more
     */
    @Unit("m")
    public static double apparentDistance(@Unit("m") double above, @Unit("m") double depth) {
        Bounds.within(above, "m", 0, 100, "height of the lamp");
        Bounds.within(depth, "m", 0, 1000, "depth");
        return above + depth / REFRACTIVE_INDEX;
    }
}
