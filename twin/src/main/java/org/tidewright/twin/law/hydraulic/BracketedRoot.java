package org.tidewright.twin.law.hydraulic;

import java.util.function.DoubleUnaryOperator;

/**
 * A root between two points where a continuous function has opposite signs. Inverse quadratic interpolation where the
 * last three points allow it, bisection where not, so it cannot leave the bracket.
 *
 * @source Chandrupatla 1997, Adv. Eng. Softw. 28, 145-149 (from memory)
 */
final class BracketedRoot {
    private static final double RELATIVE_TOLERANCE = 4e-16;
    private static final int MOST_STEPS = 200;

    private BracketedRoot() {}

    /** The root of f between one end and the other, as close as doubles allow beyond {@code absoluteTolerance}. */
    static double find(DoubleUnaryOperator f, double oneEnd, double otherEnd, double absoluteTolerance) {
        double a = oneEnd;
        double b = otherEnd;
        double fa = f.applyAsDouble(a);
        double fb = f.applyAsDouble(b);
        if (fa == 0) {
            return a;
        }
        if (fb == 0) {
            return b;
        }
        if (!(fa * fb < 0 || Math.signum(fa) * Math.signum(fb) < 0)) {
            throw new IllegalArgumentException("no change of sign between " + a + " (" + fa + ") and " + b + " (" + fb
                    + "); the root must lie between them");
        }
        double share = 0.5;
        double best = a;
        for (int step = 0; step < MOST_STEPS; step++) {
            double x = a + share * (b - a);
            double fx = f.applyAsDouble(x);
            double c;
            double fc;
            if (Math.signum(fx) == Math.signum(fa)) {
                c = a;
                fc = fa;
            } else {
                c = b;
                fc = fb;
                b = a;
                fb = fa;
            }
            a = x;
            fa = fx;
            best = Math.abs(fa) < Math.abs(fb) ? a : b;
            double tolerance = 2 * RELATIVE_TOLERANCE * Math.abs(best) + absoluteTolerance;
            double least = tolerance / Math.abs(b - a);
            if (least > 0.5 || fa == 0) {
                return best;
            }
            share = Math.min(1 - least, Math.max(least, nextShare(a, b, c, fa, fb, fc)));
        }
        return best;
    }

    private static double nextShare(double a, double b, double c, double fa, double fb, double fc) {
        double xi = (a - b) / (c - b);
        double phi = (fa - fb) / (fc - fb);
        boolean interpolationIsMonotone = phi * phi < xi && (1 - phi) * (1 - phi) < 1 - xi;
        if (!interpolationIsMonotone) {
            return 0.5;
        }
        return fa / (fb - fa) * fc / (fb - fc) + (c - a) / (b - a) * fa / (fc - fa) * fb / (fc - fb);
    }
}
