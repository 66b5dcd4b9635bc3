package org.tidewright.twin.law.heat;

import org.tidewright.seawater.range.Bounds;
import org.tidewright.seawater.unit.Unit;

/** How much heater a system needs on its coldest day. */
public final class HeaterSizing {
    /** Common practice: cold spots, ageing, a window left open. */
    @Unit("1")
    public static final double MARGIN = 1.3;

    private HeaterSizing() {}

    /**
     * Least heater power.
     *
     * <pre>P = m (loss - other heat), not below zero</pre>
     *
     * @param loss heat lost at the coldest credible room
     * @param otherHeat what can be relied on even then: submerged pumps, not lights
     * @param margin m, see {@link #MARGIN}
     * @return power of all heaters together
     * @source heat balance; the margin is common practice
     * @validity steady state
     */
    @Unit("W")
    public static double power(@Unit("W") double loss, @Unit("W") double otherHeat, @Unit("1") double margin) {
        Bounds.within(loss, "W", -1e7, 1e7, "heat loss");
        Bounds.within(otherHeat, "W", 0, 1e7, "other heat");
        Bounds.within(margin, "1", 1, 10, "margin");
        return Math.max(0, margin * (loss - otherHeat));
    }
}
