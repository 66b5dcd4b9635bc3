package org.tidewright.numerics.root;

import java.util.function.DoubleUnaryOperator;

/**
 * Root of a function between two points where its signs differ, without derivatives.
 *
 * <p>Interpolate, truncate, project: Oliveira and Takahashi 2021, ACM Trans. Math. Softw. 47(1), article 5, with their
 * k1 = 0.2/(high - low), k2 = 2, n0 = 1. Faster than linear on smooth functions, and never more than one evaluation
 * behind bisection on any other, so it cannot fail: a bracket of width w is narrowed to a tolerance e in at most
 * ceil(log2(w/e)) + 1 evaluations. A jump through zero counts as a root.
 */
public final class Bracketed {
    private static final double TRUNCATION = 0.2;

    private Bracketed() {}

    /**
     * The root as closely as doubles tell: a zero, or one of two neighbouring doubles between which the sign changes.
     *
     * @param f the function, free to jump or to be infinite, never NaN
     * @param low lower end of the bracket
     * @param high upper end, above {@code low}; f must not have the same strict sign at both ends
     * @return of the two neighbours that where |f| is smaller
     * @throws IllegalArgumentException when there is no bracket, or f is NaN
     */
    public static double root(DoubleUnaryOperator f, double low, double high) {
        return root(f, low, high, Double.MIN_VALUE);
    }

    /**
     * A point within {@code tolerance} of a change of sign, or an exact zero.
     *
     * @param f the function, free to jump or to be infinite, never NaN
     * @param low lower end of the bracket
     * @param high upper end, above {@code low}; f must not have the same strict sign at both ends
     * @param tolerance positive; one unit in the last place of the root is the least that can be had
     * @return the end of the last bracket where |f| is smaller
     * @throws IllegalArgumentException when there is no bracket, or f is NaN
     */
    public static double root(DoubleUnaryOperator f, double low, double high, double tolerance) {
        requireBracket(low, high, tolerance);
        double fLow = valueOf(f, low);
        if (fLow == 0) {
            return low;
        }
        double fHigh = valueOf(f, high);
        if (fHigh == 0) {
            return high;
        }
        return narrow(f, low, fLow, high, fHigh, tolerance, false);
    }

    /**
     * A point just past a change of sign: f has there the sign it has at {@code high} (is zero or of that sign, when f is
     * zero at {@code high}), and within {@code tolerance} below it has not.
     *
     * @param f the function, free to jump or to be infinite, never NaN
     * @param low lower end of the bracket; f must not be zero there
     * @param high upper end, above {@code low}
     * @param tolerance positive; one unit in the last place of the root is the least that can be had
     * @return a point above {@code low}, at most {@code high}
     * @throws IllegalArgumentException when there is no bracket, or f is NaN
     */
    public static double past(DoubleUnaryOperator f, double low, double high, double tolerance) {
        requireBracket(low, high, tolerance);
        double fLow = valueOf(f, low);
        if (fLow == 0) {
            throw new IllegalArgumentException(
                    "The function is zero at the low end " + low + "; it must have a sign there");
        }
        return narrow(f, low, fLow, high, valueOf(f, high), tolerance, true);
    }

    private static double narrow(
            DoubleUnaryOperator f,
            double low,
            double fLow,
            double high,
            double fHigh,
            double tolerance,
            boolean wantPast) {
        if (Math.signum(fLow) == Math.signum(fHigh)) {
            throw new IllegalArgumentException("No change of sign between " + low + " (value " + fLow + ") and " + high
                    + " (value " + fHigh + ")");
        }
        double signLow = Math.signum(fLow);
        boolean zeroIsPast = fHigh == 0;
        double a = low;
        double b = high;
        double fa = fLow;
        double fb = fHigh;
        double truncation = TRUNCATION / (b - a);
        // n0 = 1: after each evaluation the bracket may be as wide as bisection's was one evaluation before.
        double allowedWidth = Math.min(2 * (b - a), Double.MAX_VALUE);
        while (b - a > tolerance) {
            double middle = a + (b - a) / 2;
            if (!(middle > a && middle < b)) {
                break;
            }
            double x = next(a, fa, b, fb, middle, truncation, allowedWidth);
            double fx = valueOf(f, x);
            if (fx == 0 && !wantPast) {
                return x;
            }
            boolean isPast = fx == 0 ? zeroIsPast : Math.signum(fx) != signLow;
            if (isPast) {
                b = x;
                fb = fx;
            } else {
                a = x;
                fa = fx;
            }
            allowedWidth /= 2;
        }
        return wantPast || Math.abs(fb) < Math.abs(fa) ? b : a;
    }

    /** The next point: interpolated, moved towards the middle, and held so near it that the bracket keeps its bound. */
    private static double next(
            double a, double fa, double b, double fb, double middle, double truncation, double allowedWidth) {
        double interpolated = a + (b - a) * (fa / (fa - fb));
        double towardsMiddle = Math.signum(middle - interpolated);
        double shift = truncation * (b - a) * (b - a);
        double truncated = shift <= Math.abs(middle - interpolated) ? interpolated + towardsMiddle * shift : middle;
        double radius = Math.max(0, allowedWidth / 2 - (b - a) / 2);
        double projected = Math.abs(truncated - middle) <= radius ? truncated : middle - towardsMiddle * radius;
        return projected > a && projected < b ? projected : middle;
    }

    private static double valueOf(DoubleUnaryOperator f, double x) {
        double value = f.applyAsDouble(x);
        if (Double.isNaN(value)) {
            throw new IllegalArgumentException("The function is NaN at " + x + "; it must have a sign");
        }
        return value;
    }

    private static void requireBracket(double low, double high, double tolerance) {
        if (!(low < high && high - low < Double.POSITIVE_INFINITY)) {
            throw new IllegalArgumentException(
                    "Bracket from " + low + " to " + high + " must be finite and of positive width");
        }
        if (!(tolerance > 0 && tolerance < Double.POSITIVE_INFINITY)) {
            throw new IllegalArgumentException("Tolerance is " + tolerance + "; it must be positive and finite");
        }
    }
}
