package org.tidewright.numerics.ode;

/**
 * Coefficients of the pair of orders 5 and 4 with seven stages and of its dense output.
 *
 * <p>A, B, C and E: Dormand and Prince 1980, J. Comput. Appl. Math. 6, 19-26, table 2 (RK5(4)7M), as in Hairer, Nørsett
 * and Wanner 1993, table II.5.2; E = b - b^ is the weight of each stage in the error estimate. The last stage has the
 * coefficients of the result itself, so it serves as the first one of the next step.
 *
 * <p>D: dense output of order 4, Shampine 1986, Math. Comp. 46, 135-150, in the form of the code DOPRI5 (Hairer, Nørsett
 * and Wanner 1993, section II.6 and appendix).
 */
final class Tableau {
    static final double C2 = 1.0 / 5;
    static final double C3 = 3.0 / 10;
    static final double C4 = 4.0 / 5;
    static final double C5 = 8.0 / 9;

    static final double A21 = 1.0 / 5;
    static final double A31 = 3.0 / 40;
    static final double A32 = 9.0 / 40;
    static final double A41 = 44.0 / 45;
    static final double A42 = -56.0 / 15;
    static final double A43 = 32.0 / 9;
    static final double A51 = 19372.0 / 6561;
    static final double A52 = -25360.0 / 2187;
    static final double A53 = 64448.0 / 6561;
    static final double A54 = -212.0 / 729;
    static final double A61 = 9017.0 / 3168;
    static final double A62 = -355.0 / 33;
    static final double A63 = 46732.0 / 5247;
    static final double A64 = 49.0 / 176;
    static final double A65 = -5103.0 / 18656;

    static final double B1 = 35.0 / 384;
    static final double B3 = 500.0 / 1113;
    static final double B4 = 125.0 / 192;
    static final double B5 = -2187.0 / 6784;
    static final double B6 = 11.0 / 84;

    static final double E1 = 71.0 / 57600;
    static final double E3 = -71.0 / 16695;
    static final double E4 = 71.0 / 1920;
    static final double E5 = -17253.0 / 339200;
    static final double E6 = 22.0 / 525;
    static final double E7 = -1.0 / 40;

    static final double D1 = -12715105075.0 / 11282082432.0;
    static final double D3 = 87487479700.0 / 32700410799.0;
    static final double D4 = -10690763975.0 / 1880347072.0;
    static final double D5 = 701980252875.0 / 199316789632.0;
    static final double D6 = -1453857185.0 / 822651844.0;
    static final double D7 = 69997945.0 / 29380423.0;

    /** b and d of all seven stages. */
    static final double[] B = {B1, 0, B3, B4, B5, B6, 0};

    static final double[] D = {D1, 0, D3, D4, D5, D6, D7};

    private Tableau() {}
}
