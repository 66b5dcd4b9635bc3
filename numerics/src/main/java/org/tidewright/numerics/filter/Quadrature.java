package org.tidewright.numerics.filter;

/**
 * Gauss and Legendre's rule with eight points over 0 to 1: exact for polynomials of degree 15.
 *
 * @source places and weights over -1 to 1 as in Abramowitz and Stegun 1964, Handbook of Mathematical Functions, table 25.4
 */
final class Quadrature {
    static final int POINTS = 8;

    private static final double[] HALF_PLACES = {
        0.183434642495650, 0.525532409916329, 0.796666477413627, 0.960289856497536
    };
    private static final double[] HALF_WEIGHTS = {
        0.362683783378362, 0.313706645877887, 0.222381034453374, 0.101228536290376
    };

    private Quadrature() {}

    static double place(int point) {
        double place = HALF_PLACES[point / 2];
        return 0.5 + (point % 2 == 0 ? place : -place) / 2;
    }

    static double weight(int point) {
        return HALF_WEIGHTS[point / 2] / 2;
    }
}
