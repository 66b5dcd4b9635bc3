package org.tidewright.numerics.filter;

/**
 * Gauss and Legendre's rule with five points over 0 to 1: exact for polynomials of degree 9.
 *
 * @source places and weights over -1 to 1 as in Abramowitz and Stegun 1964, Handbook of Mathematical Functions, table 25.4
 */
final class Quadrature {
    static final int POINTS = 5;

    private static final double[] PLACES = {
        -0.906179845938664, -0.538469310105683, 0, 0.538469310105683, 0.906179845938664
    };
    private static final double[] WEIGHTS = {
        0.236926885056189, 0.478628670499366, 0.568888888888889, 0.478628670499366, 0.236926885056189
    };

    private Quadrature() {}

    static double place(int point) {
        return (1 + PLACES[point]) / 2;
    }

    static double weight(int point) {
        return WEIGHTS[point] / 2;
    }
}
