package org.tidewright.twin.law.hydraulic;

import org.tidewright.numerics.root.Bracketed;
import org.tidewright.seawater.range.Bounds;
import org.tidewright.seawater.unit.Gravity;
import org.tidewright.seawater.unit.Unit;

/**
 * A smooth, sharp crest across the full width of its channel by the formula of Rehbock, which lengthens the head for
 * the pull of surface tension.
 *
 * <pre>Q = (2/3) (0.602 + 0.083 h/P) sqrt(2g) b (h + 0.0012)^1.5</pre>
 *
 * <p>The added 1.2 mm would let a dry crest flow; at and below the crest the flow is therefore none, with a step of
 * 0.075 L/s per metre at h = 0.
 *
 * @param length length of the crest
 * @param crestHeight P, height of the crest over the floor upstream
 * @param capillaryHead head added for surface tension and viscosity
 * @param slope growth of the discharge coefficient with h/P
 * @source Rehbock 1929, Trans. ASCE 93, 1143-1162 (pages from memory); constants of ISO 1438 (0.083, 1.2 mm, from memory) or as reprinted
 *     in Blevins 1984, Applied Fluid Dynamics Handbook (0.0832, 1.25 mm)
 * @validity h from 0.03 m, P from 0.10 m, b from 0.15 m (ISO 1438)
 * @checkvalue constants of Blevins, b = 1.0 m, P = 0.3 m, h = 0.1 m: 0.0599009 m^3/s
 */
public record RehbockWeir(
        @Unit("m") double length,
        @Unit("m") double crestHeight,
        @Unit("m") double capillaryHead,
        @Unit("1") double slope)
        implements Weir {
    private static final double TWO_THIRDS_ROOT_2G = 2.0 / 3 * Math.sqrt(2 * Gravity.STANDARD);
    private static final double COEFFICIENT_AT_NO_HEAD = 0.602;
    private static final double LEAST_HEAD = 0.03;
    private static final double LEAST_CREST_HEIGHT = 0.10;
    private static final double LEAST_LENGTH = 0.15;
    private static final double RELATIVE_ERROR_OF_THIN_SHEETS = 0.15;

    public RehbockWeir {
        Bounds.positive(length, "m", "length of the crest");
        Bounds.positive(crestHeight, "m", "height of the crest over the floor");
        Bounds.within(capillaryHead, "m", 0, 0.01, "head added for surface tension");
        Bounds.within(slope, "1", 0, 1, "growth of the discharge coefficient");
    }

    /** With the constants of ISO 1438. */
    public RehbockWeir(@Unit("m") double length, @Unit("m") double crestHeight) {
        this(length, crestHeight, 0.0012, 0.083);
    }

    /** With the constants reprinted in Blevins 1984. */
    public static RehbockWeir asInBlevins(@Unit("m") double length, @Unit("m") double crestHeight) {
        return new RehbockWeir(length, crestHeight, 0.00125, 0.0832);
    }

    @Override
    @Unit("m^3/s")
    public double flow(@Unit("m") double head) {
        return head > 0 ? wet(head) : Dry.noFlow(head);
    }

    private double wet(double head) {
        double lengthened = head + capillaryHead;
        double coefficient = COEFFICIENT_AT_NO_HEAD + slope * head / crestHeight;
        return TWO_THIRDS_ROOT_2G * coefficient * length * lengthened * Math.sqrt(lengthened);
    }

    /** {@inheritDoc} A flow smaller than the step at the crest needs no head. */
    @Override
    @Unit("m")
    public double head(@Unit("m^3/s") double flow) {
        Bounds.notNegative(flow, "m^3/s", "flow over the crest");
        if (flow <= wet(0)) {
            return 0;
        }
        double steady = flow / (TWO_THIRDS_ROOT_2G * COEFFICIENT_AT_NO_HEAD * length);
        return Bracketed.root(head -> wet(head) - flow, 0, Math.cbrt(steady * steady));
    }

    @Override
    public boolean withinStatedRange(@Unit("m") double head) {
        return head >= LEAST_HEAD && crestHeight >= LEAST_CREST_HEIGHT && length >= LEAST_LENGTH;
    }

    /**
     * {@inheritDoc}
     *
     * @source common practice: 15 %; the gap to the formula of Francis is of that size
     */
    @Override
    @Unit("1")
    public double relativeError() {
        return RELATIVE_ERROR_OF_THIN_SHEETS;
    }
}
