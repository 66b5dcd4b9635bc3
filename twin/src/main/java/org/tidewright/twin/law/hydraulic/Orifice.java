package org.tidewright.twin.law.hydraulic;

import org.tidewright.seawater.range.Bounds;
import org.tidewright.seawater.unit.Gravity;
import org.tidewright.seawater.unit.Unit;

/** A hole with water on one side: a burst tube, an open seam, a siphon-break hole, the gap under a baffle. */
public final class Orifice {
    /** Discharge coefficient of a sharp-edged hole; from memory, 0.60 to 0.62. */
    @Unit("1")
    public static final double SHARP_EDGED = 0.6;

    private Orifice() {}

    /**
     * Flow through a hole.
     *
     * <pre>Q = Cd A sqrt(2 g h)</pre>
     *
     * @param area A of the hole
     * @param head level difference over the hole (over its centre when it spouts into air); its sign gives the flow's
     * @param dischargeCoefficient Cd
     * @source Torricelli's law with a contraction coefficient, common practice
     * @validity hole small against its depth, Reynolds number above about 1e4 (from memory)
     */
    @Unit("m^3/s")
    public static double flow(
            @Unit("m^2") double area, @Unit("m") double head, @Unit("1") double dischargeCoefficient) {
        Bounds.notNegative(area, "m^2", "area of the hole");
        Bounds.finite(head, "m", "head over the hole");
        Bounds.within(dischargeCoefficient, "1", 0, 1, "discharge coefficient");
        double speed = Math.sqrt(2 * Gravity.STANDARD * Math.abs(head));
        return Math.copySign(dischargeCoefficient * area * speed, head);
    }

    /**
     * Level lost in a gap that a flow must pass.
     *
     * <pre>dz = (Q / (Cd A))^2 / (2 g)</pre>
     *
     * @param flow Q
     * @param area A of the gap, greater than 0
     * @param dischargeCoefficient Cd
     * @source the inverse of {@link #flow}
     */
    @Unit("m")
    public static double head(
            @Unit("m^3/s") double flow, @Unit("m^2") double area, @Unit("1") double dischargeCoefficient) {
        Bounds.finite(flow, "m^3/s", "flow");
        Bounds.positive(area, "m^2", "area of the hole");
        Bounds.within(dischargeCoefficient, "1", Double.MIN_NORMAL, 1, "discharge coefficient");
        double speed = flow / (dischargeCoefficient * area);
        return Math.copySign(speed * speed / (2 * Gravity.STANDARD), flow);
    }
}
