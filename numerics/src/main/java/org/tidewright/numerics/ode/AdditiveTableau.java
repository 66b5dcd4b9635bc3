package org.tidewright.numerics.ode;

/**
 * Coefficients of an additive Runge-Kutta pair: an explicit and an implicit part with one diagonal, which share their
 * weights.
 *
 * @param order of the result; that of the embedded weights is one less
 * @param gamma diagonal of the implicit part from the second stage on
 * @param nodes by stage
 * @param explicit by stage and earlier stage
 * @param implicit the same, below the diagonal
 * @param weights of the result
 * @param embedded weights of the lower order
 */
record AdditiveTableau(
        int order,
        double gamma,
        double[] nodes,
        double[][] explicit,
        double[][] implicit,
        double[] weights,
        double[] embedded) {
    /**
     * ARK4(3)6L[2]SA, stiffly accurate and L-stable.
     *
     * <p>Kennedy and Carpenter 2003, Appl. Numer. Math. 44, 139-181, appendix C.
     */
    static final AdditiveTableau KENNEDY_CARPENTER_4 = new AdditiveTableau(
            4,
            0.25,
            new double[] {0, 1.0 / 2, 83.0 / 250, 31.0 / 50, 17.0 / 20, 1},
            new double[][] {
                {},
                {1.0 / 2},
                {13861.0 / 62500, 6889.0 / 62500},
                {
                    -116923316275.0 / 2393684061468.0,
                    -2731218467317.0 / 15368042101831.0,
                    9408046702089.0 / 11113171139209.0
                },
                {
                    -451086348788.0 / 2902428689909.0,
                    -2682348792572.0 / 7519795681897.0,
                    12662868775082.0 / 11960479115383.0,
                    3355817975965.0 / 11060851509271.0
                },
                {
                    647845179188.0 / 3216320057751.0,
                    73281519250.0 / 8382639484533.0,
                    552539513391.0 / 3454668386233.0,
                    3354512671639.0 / 8306763924573.0,
                    4040.0 / 17871
                }
            },
            new double[][] {
                {},
                {1.0 / 4},
                {8611.0 / 62500, -1743.0 / 31250},
                {5012029.0 / 34652500, -654441.0 / 2922500, 174375.0 / 388108},
                {15267082809.0 / 155376265600.0, -71443401.0 / 120774400, 730878875.0 / 902184768, 2285395.0 / 8070912},
                {82889.0 / 524892, 0, 15625.0 / 83664, 69875.0 / 102672, -2260.0 / 8211}
            },
            new double[] {82889.0 / 524892, 0, 15625.0 / 83664, 69875.0 / 102672, -2260.0 / 8211, 1.0 / 4},
            new double[] {
                4586570599.0 / 29645900160.0,
                0,
                178811875.0 / 945068544,
                814220225.0 / 1159782912,
                -3700637.0 / 11593932,
                61727.0 / 225920
            });

    int stages() {
        return weights.length;
    }
}
