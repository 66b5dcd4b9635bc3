package org.tidewright.twin.law.hydraulic;

import org.tidewright.numerics.root.Bracketed;
import org.tidewright.seawater.range.Bounds;
import org.tidewright.seawater.unit.Gravity;
import org.tidewright.seawater.unit.Unit;

/**
 * One run of pipe or hose of one bore, with its fittings, flowing full.
 *
 * <pre>h = (m f L/d + sum K) v^2 / (2g),   f by Churchill 1977</pre>
 *
 * <p>Head losses and flows carry the sign of the direction.
 *
 * @param bore d, inner diameter
 * @param length L, along the axis
 * @param roughness e, height of the wall's roughness; {@link PipeFriction#CLEAN_PLASTIC} when new
 * @param lossSum sum of the loss coefficients K of entry, fittings and exit, on this bore's speed
 * @param frictionMultiplier m, 1 for a smooth wall, {@link PipeFriction#RIBBED_HOSE_MULTIPLIER} for a ribbed hose
 * @source Darcy and Weisbach's equation; friction factor see {@link PipeFriction#churchill}
 */
public record PipeRun(
        @Unit("m") double bore,
        @Unit("m") double length,
        @Unit("m") double roughness,
        @Unit("1") double lossSum,
        @Unit("1") double frictionMultiplier) {
    private static final double TWO_G = 2 * Gravity.STANDARD;
    private static final double FIRST_GUESS_OF_FRICTION = 0.025;
    private static final double TOLERANCE = 1e-13;

    /** From here one more secant step ends below {@link #TOLERANCE}, its slope being good to a part in a million. */
    private static final double GAP_A_SECANT_CLOSES = 1e-8;

    private static final int MOST_STEPS = 60;

    public PipeRun {
        Bounds.positive(bore, "m", "bore");
        Bounds.notNegative(length, "m", "length of the run");
        Bounds.within(roughness, "m", 0, bore / 2, "roughness of the wall");
        Bounds.notNegative(lossSum, "1", "sum of loss coefficients");
        Bounds.within(frictionMultiplier, "1", 0.1, 10, "multiplier of the friction factor");
    }

    /** A run with a smooth wall. */
    public PipeRun(
            @Unit("m") double bore, @Unit("m") double length, @Unit("m") double roughness, @Unit("1") double lossSum) {
        this(bore, length, roughness, lossSum, 1);
    }

    /** The same run with a fitting more. */
    public PipeRun withExtraLoss(@Unit("1") double loss) {
        return new PipeRun(bore, length, roughness, lossSum + loss, frictionMultiplier);
    }

    /** The same run with its wall grown rough. */
    public PipeRun withRoughness(@Unit("m") double grown) {
        return new PipeRun(bore, length, grown, lossSum, frictionMultiplier);
    }

    /** Area of the bore. */
    @Unit("m^2")
    public double area() {
        return Math.PI / 4 * bore * bore;
    }

    /** Volume of water in the run when full. */
    @Unit("m^3")
    public double contents() {
        return area() * length;
    }

    /** Mean speed at a flow. */
    @Unit("m/s")
    public double speed(@Unit("m^3/s") double flow) {
        return flow / area();
    }

    /** Head lost at a flow. */
    @Unit("m")
    public double headLoss(@Unit("m^3/s") double flow, @Unit("m^2/s") double kinematicViscosity) {
        if (flow == 0) {
            return 0;
        }
        double speed = speed(flow);
        return Math.copySign(
                lossCoefficient(speed, kinematicViscosity) * speed * speed / TWO_G,
                Bounds.finite(flow, "m^3/s", "flow"));
    }

    /** All losses of the run as one coefficient on the bore's speed: m f L/d + sum K. */
    @Unit("1")
    public double lossCoefficient(@Unit("m/s") double speed, @Unit("m^2/s") double kinematicViscosity) {
        double reynolds = PipeFriction.reynolds(speed, bore, kinematicViscosity);
        return frictionMultiplier * PipeFriction.churchill(reynolds, roughness / bore) * length / bore + lossSum;
    }

    /**
     * Flow that a difference of head drives through the run: the inverse of {@link #headLoss}.
     *
     * <p>Iterates v = sqrt(2 g h / (m f(v) L/d + sum K)) with secant steps; three or four are usual.
     *
     * @param headDifference level at the entry less level at the exit; negative drives the flow backward
     * @param kinematicViscosity of the water
     */
    @Unit("m^3/s")
    public double flow(@Unit("m") double headDifference, @Unit("m^2/s") double kinematicViscosity) {
        if (headDifference == 0) {
            return 0;
        }
        Bounds.finite(headDifference, "m", "head difference");
        if (length == 0 && lossSum == 0) {
            throw new IllegalArgumentException("a run of no length and no loss would pass any flow; give it a length"
                    + " greater than 0 m or a sum of loss coefficients greater than 0");
        }
        double head = Math.abs(headDifference);
        return Math.copySign(area() * speedUnder(head, kinematicViscosity), headDifference);
    }

    private double speedUnder(double head, double viscosity) {
        double twoGH = TWO_G * head;
        double last = Math.sqrt(twoGH / (frictionMultiplier * FIRST_GUESS_OF_FRICTION * length / bore + lossSum));
        double speed = Math.sqrt(twoGH / lossCoefficient(last, viscosity));
        double lastGap = speed - last;
        for (int step = 0; step < MOST_STEPS; step++) {
            double gap = Math.sqrt(twoGH / lossCoefficient(speed, viscosity)) - speed;
            double slope = (gap - lastGap) / (speed - last);
            // The fixed-point map is flat in turbulent flow and a square root in laminar flow: slopes of the gap lie
            // between -2 and -0.4 near the root. Anything else means the two points are too far apart or too close.
            boolean trusted = slope < -0.4 && slope > -2.5;
            double next = trusted ? speed - gap / slope : speed + gap;
            if (Math.abs(gap) <= (trusted ? GAP_A_SECANT_CLOSES : TOLERANCE) * speed) {
                return next;
            }
            last = speed;
            lastGap = gap;
            speed = next > 0 ? next : speed + gap;
        }
        return speedBySearch(head, viscosity);
    }

    private double speedBySearch(double head, double viscosity) {
        double most = 1;
        while (headLoss(area() * most, viscosity) < head) {
            most *= 2;
        }
        return Bracketed.root(v -> headLoss(area() * v, viscosity) - head, 0, most);
    }
}
