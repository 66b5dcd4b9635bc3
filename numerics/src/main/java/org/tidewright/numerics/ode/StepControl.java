package org.tidewright.numerics.ode;

/**
 * Proportional-integral choice of the next step from the scaled error of this one.
 *
 * <pre>
 * accepted: h_new = h min(10, max(0.2, 0.9 err^(-a) err_old^b)),  b = 0.04,  a = 1/order - 0.75 b
 * rejected: h_new = h max(0.2, 0.9 err^(-a))
 * </pre>
 *
 * <p>Gustafsson 1991, ACM Trans. Math. Softw. 17, 533-554, with the constants of the code DOPRI5 (Hairer, Nørsett and
 * Wanner 1993, section II.4 and appendix; b as in Hairer and Wanner 1996, section IV.2). By StrictMath, so that
 * steps are the same on every machine; its pow allocates, hence the logarithms.
 */
final class StepControl {
    private static final double INTEGRAL = 0.04;
    private static final double LOG_SAFETY = StrictMath.log(0.9);
    private static final double LEAST_FACTOR = 0.2;
    private static final double GREATEST_FACTOR = 10;
    private static final double LEAST_LOG_ERROR_REMEMBERED = StrictMath.log(1e-4);

    private final double proportional;
    private double lastLogError = LEAST_LOG_ERROR_REMEMBERED;
    private boolean justRejected;

    /**
     * Control for a method.
     *
     * @param order of its error as a power of the step: 5 for the pair of orders 5 and 4
     */
    StepControl(int order) {
        proportional = 1.0 / order - 0.75 * INTEGRAL;
    }

    /** Forgets the errors of steps taken before a jump. */
    void restart() {
        lastLogError = LEAST_LOG_ERROR_REMEMBERED;
        justRejected = false;
    }

    /** Factor for the step after an accepted one; no growth straight after a rejection. */
    double factorAfterAcceptance(double error) {
        double logError = StrictMath.log(error);
        double wanted = StrictMath.exp(LOG_SAFETY - proportional * logError + INTEGRAL * lastLogError);
        double factor = Math.min(justRejected ? 1 : GREATEST_FACTOR, Math.max(LEAST_FACTOR, wanted));
        lastLogError = Math.max(logError, LEAST_LOG_ERROR_REMEMBERED);
        justRejected = false;
        return factor;
    }

    /** Factor for a second try; an infinite error asks for the strongest cut. */
    double factorAfterRejection(double error) {
        justRejected = true;
        return Math.max(LEAST_FACTOR, StrictMath.exp(LOG_SAFETY - proportional * StrictMath.log(error)));
    }

    /** Whether the factor was held back by its bound rather than chosen by the error. */
    static boolean atGreatest(double factor) {
        return factor == GREATEST_FACTOR;
    }
}
