package org.tidewright.twin.law.hydraulic;

import java.util.Arrays;
import org.tidewright.numerics.root.Bracketed;
import org.tidewright.seawater.range.Bounds;
import org.tidewright.seawater.unit.Unit;

/**
 * A pump curve through given points by a monotone cubic, so that no bump appears between two points and every head has
 * one flow.
 *
 * <p>Each interval is a cubic with given heads and slopes at its ends. The slope at an inner point is the weighted
 * harmonic mean of the two secants beside it, h their lengths in flow:
 *
 * <pre>(w1 + w2)/d = w1/s1 + w2/s2,   w1 = 2 h2 + h1,   w2 = h2 + 2 h1</pre>
 *
 * which keeps the cubic monotone by the criterion of Fritsch and Carlson; at the two ends a three-point slope, cut where
 * it would overshoot. Beyond the last point the curve goes on straight, with the slope of the last secant, down to no
 * head: that free flow is an extrapolation unless the table reaches it.
 *
 * @source Fritsch and Carlson 1980, SIAM J. Numer. Anal. 17, 238-246 (criterion); Fritsch and Butland 1984, SIAM J. Sci.
 *     Stat. Comput. 5, 300-304 (slopes)
 */
public final class TabulatedPump implements PumpCurve {
    private final double[] flows;
    private final double[] heads;
    private final double[] slopes;
    private final double freeFlow;

    /**
     * A curve through points.
     *
     * @param flows rising, the first 0; at least two
     * @param heads falling, none negative; as many as flows
     */
    public TabulatedPump(@Unit("m^3/s") double[] flows, @Unit("m") double[] heads) {
        requireFallingCurve(flows, heads);
        this.flows = flows.clone();
        this.heads = heads.clone();
        this.slopes = monotoneSlopes(this.flows, this.heads);
        this.freeFlow = extrapolatedFreeFlow(this.flows, this.heads);
    }

    private static void requireFallingCurve(double[] flows, double[] heads) {
        if (flows.length != heads.length || flows.length < 2) {
            throw new IllegalArgumentException("a pump curve needs as many heads as flows and at least two; there are "
                    + flows.length + " flows and " + heads.length + " heads");
        }
        if (flows[0] != 0) {
            throw Bounds.refusal(flows[0], "m^3/s", "first flow of the pump curve", "0, where the pump is shut off");
        }
        for (int i = 0; i < flows.length; i++) {
            Bounds.notNegative(flows[i], "m^3/s", "flow " + (i + 1) + " of the pump curve");
            Bounds.notNegative(heads[i], "m", "head " + (i + 1) + " of the pump curve");
            if (i > 0 && !(flows[i] > flows[i - 1])) {
                throw Bounds.refusal(
                        flows[i], "m^3/s", "flow " + (i + 1) + " of the pump curve", "more than the one before it");
            }
            if (i > 0 && !(heads[i] < heads[i - 1])) {
                throw Bounds.refusal(
                        heads[i], "m", "head " + (i + 1) + " of the pump curve", "less than the one before it");
            }
        }
    }

    private static double[] monotoneSlopes(double[] x, double[] y) {
        int n = x.length;
        double[] slope = new double[n];
        if (n == 2) {
            Arrays.fill(slope, secant(x, y, 0));
            return slope;
        }
        for (int i = 1; i < n - 1; i++) {
            double before = x[i] - x[i - 1];
            double after = x[i + 1] - x[i];
            double w1 = 2 * after + before;
            double w2 = after + 2 * before;
            slope[i] = (w1 + w2) / (w1 / secant(x, y, i - 1) + w2 / secant(x, y, i));
        }
        slope[0] = endSlope(x[1] - x[0], x[2] - x[1], secant(x, y, 0), secant(x, y, 1));
        slope[n - 1] = endSlope(x[n - 1] - x[n - 2], x[n - 2] - x[n - 3], secant(x, y, n - 2), secant(x, y, n - 3));
        return slope;
    }

    private static double secant(double[] x, double[] y, int i) {
        return (y[i + 1] - y[i]) / (x[i + 1] - x[i]);
    }

    /** Slope at an end from the nearest two intervals; all secants fall, so a slope that rises is cut to 0. */
    private static double endSlope(double near, double far, double nearSecant, double farSecant) {
        double threePoint = ((2 * near + far) * nearSecant - near * farSecant) / (near + far);
        return Math.min(0, threePoint);
    }

    private static double extrapolatedFreeFlow(double[] flows, double[] heads) {
        int last = flows.length - 1;
        return flows[last] - heads[last] / secant(flows, heads, last - 1);
    }

    @Override
    @Unit("m")
    public double head(@Unit("m^3/s") double flow) {
        Bounds.number(flow, "m^3/s", "flow");
        int last = flows.length - 1;
        if (flow <= 0) {
            return heads[0];
        }
        if (flow >= flows[last]) {
            return Math.max(0, heads[last] + secant(flows, heads, last - 1) * (flow - flows[last]));
        }
        int right = Arrays.binarySearch(flows, flow);
        return right >= 0 ? heads[right] : cubic(-right - 2, flow);
    }

    private double cubic(int left, double flow) {
        double width = flows[left + 1] - flows[left];
        double t = (flow - flows[left]) / width;
        double rest = 1 - t;
        return rest * rest * ((1 + 2 * t) * heads[left] + t * width * slopes[left])
                + t * t * ((1 + 2 * rest) * heads[left + 1] - rest * width * slopes[left + 1]);
    }

    @Override
    @Unit("m^3/s")
    public double flow(@Unit("m") double head) {
        Bounds.number(head, "m", "head");
        int last = flows.length - 1;
        if (head >= heads[0]) {
            return 0;
        }
        if (head <= heads[last]) {
            return flows[last] + (Math.max(0, head) - heads[last]) / secant(flows, heads, last - 1);
        }
        int left = 0;
        while (heads[left + 1] > head) {
            left++;
        }
        int segment = left;
        return Bracketed.root(q -> cubic(segment, q) - head, flows[segment], flows[segment + 1]);
    }

    @Override
    @Unit("m")
    public double shutOffHead() {
        return heads[0];
    }

    @Override
    @Unit("m^3/s")
    public double freeFlow() {
        return freeFlow;
    }

    /** Whether a flow lies within the given points rather than on the straight line beyond them. */
    public boolean withinTable(@Unit("m^3/s") double flow) {
        return flow >= 0 && flow <= flows[flows.length - 1];
    }
}
