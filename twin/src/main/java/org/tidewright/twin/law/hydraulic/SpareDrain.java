package org.tidewright.twin.law.hydraulic;

import org.tidewright.seawater.range.Bounds;
import org.tidewright.seawater.unit.Unit;

/**
 * The emergency drain that must carry everything when the main one is shut by a snail or a leaf. Its lip stands over
 * the running level, so it is dry in normal operation.
 *
 * @param mouth its open upper end
 * @param lipHeight height of its lip, from the same datum as the levels asked for
 * @source continuity; see {@link DrainMouth} and {@link VentedDrain}
 */
public record SpareDrain(DrainMouth mouth, @Unit("m") double lipHeight) {
    public SpareDrain {
        Bounds.finite(lipHeight, "m", "height of the lip");
    }

    /** Level at which this drain alone takes a flow. */
    @Unit("m")
    public double levelFor(@Unit("m^3/s") double flow) {
        return lipHeight + mouth.head(flow);
    }

    /** What it carries quietly, as a share of a flow: from 1 upward it can stand in without swings of pressure. */
    @Unit("1")
    public double quietShare(@Unit("m^3/s") double flow) {
        return VentedDrain.annularLimit(mouth.bore()) / Bounds.positive(flow, "m^3/s", "flow");
    }

    /**
     * Time in which a flow that finds no way out lifts a surface.
     *
     * @param surface free surface of the vessel
     * @param rise of its level
     * @param flow into it
     * @checkvalue 0.041472 m^2, 50 mm, 2500 L/h: 2.986 s
     */
    @Unit("s")
    public static double timeToRise(@Unit("m^2") double surface, @Unit("m") double rise, @Unit("m^3/s") double flow) {
        Bounds.positive(surface, "m^2", "free surface");
        Bounds.notNegative(rise, "m", "rise");
        return surface * rise / Bounds.positive(flow, "m^3/s", "flow");
    }
}
