package org.tidewright.numerics.filter;

import java.util.function.DoubleUnaryOperator;

/**
 * Gauss and Legendre's rule with five points, exact for polynomials of degree 9, over parts of a time in which an exponential
 * falls by no more than a factor of √e: what falls so and its square are integrated to some 12 digits.
 *
 * @source places and weights over -1 to 1 as in Abramowitz and Stegun 1964, Handbook of Mathematical Functions, table 25.4
 */
final class Quadrature {
    private static final double FALL_IN_A_PART = 0.5;
    private static final int MOST_PARTS = 400;

    private static final double[] PLACES = {
        -0.906179845938664, -0.538469310105683, 0, 0.538469310105683, 0.906179845938664
    };
    private static final double[] WEIGHTS = {
        0.236926885056189, 0.478628670499366, 0.568888888888889, 0.478628670499366, 0.236926885056189
    };

    private Quadrature() {}

    /** What is to be added up at a place, times a weight. */
    @FunctionalInterface
    interface Term {
        void add(double place, double weight);
    }

    /**
     * Adds up over a time from 0.
     *
     * @param fastest rate at which anything falls
     */
    static void over(double time, double fastest, Term term) {
        int parts = (int) Math.min(MOST_PARTS, 1 + fastest * time / FALL_IN_A_PART);
        double half = time / parts / 2;
        for (int part = 0; part < parts; part++) {
            for (int point = 0; point < PLACES.length; point++) {
                term.add(half * (2 * part + 1 + PLACES[point]), half * WEIGHTS[point]);
            }
        }
    }

    static double integral(DoubleUnaryOperator function, double time, double fastest) {
        double[] sum = new double[1];
        over(time, fastest, (place, weight) -> sum[0] += weight * function.applyAsDouble(place));
        return sum[0];
    }
}
