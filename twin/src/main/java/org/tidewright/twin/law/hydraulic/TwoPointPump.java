package org.tidewright.twin.law.hydraulic;

import org.tidewright.seawater.range.Bounds;
import org.tidewright.seawater.unit.Unit;

/**
 * A pump of which only the two numbers on the box are known.
 *
 * <pre>H = H0 (1 - (Q/Qm)^p)</pre>
 *
 * @param shutOffHead H0
 * @param freeFlow Qm
 * @param exponent p: 2 is usual; small centrifugal pumps lie between 1.3 and 2, which is 15 % at mid-flow
 * @source common practice
 * @checkvalue a curve through (1500, 250) with p = 2 and H0 = 4/3 of 250: 204.35 at 1866.18 (EPANET's example Net1)
 */
public record TwoPointPump(
        @Unit("m") double shutOffHead,
        @Unit("m^3/s") double freeFlow,
        @Unit("1") double exponent) implements PumpCurve {
    public TwoPointPump {
        Bounds.positive(shutOffHead, "m", "shut-off head");
        Bounds.positive(freeFlow, "m^3/s", "free flow");
        Bounds.within(exponent, "1", 1, 4, "exponent of the pump curve");
    }

    /** With the usual exponent, 2. */
    public TwoPointPump(@Unit("m") double shutOffHead, @Unit("m^3/s") double freeFlow) {
        this(shutOffHead, freeFlow, 2);
    }

    @Override
    @Unit("m")
    public double head(@Unit("m^3/s") double flow) {
        Bounds.number(flow, "m^3/s", "flow");
        double share = Math.min(1, Math.max(0, flow / freeFlow));
        return shutOffHead * (1 - (exponent == 2 ? share * share : Math.pow(share, exponent)));
    }

    @Override
    @Unit("m^3/s")
    public double flow(@Unit("m") double head) {
        Bounds.number(head, "m", "head");
        double share = Math.min(1, Math.max(0, 1 - head / shutOffHead));
        return freeFlow * (exponent == 2 ? Math.sqrt(share) : Math.pow(share, 1 / exponent));
    }
}
