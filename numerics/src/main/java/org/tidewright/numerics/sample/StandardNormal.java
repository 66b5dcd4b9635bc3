package org.tidewright.numerics.sample;

import org.hipparchus.special.Erf;

/** The normal distribution of mean 0 and standard deviation 1. */
public final class StandardNormal {
    // Coefficients as printed, by rising powers; the digits beyond a double's are kept so that they can be compared.
    @SuppressWarnings("FloatingPointLiteralPrecision") // as printed
    static final double[] A = {
        3.3871328727963666080e0, 1.3314166789178437745e+2, 1.9715909503065514427e+3, 1.3731693765509461125e+4,
        4.5921953931549871457e+4, 6.7265770927008700853e+4, 3.3430575583588128105e+4, 2.5090809287301226727e+3
    };

    @SuppressWarnings("FloatingPointLiteralPrecision") // as printed
    static final double[] B = {
        1.0, 4.2313330701600911252e+1, 6.8718700749205790830e+2, 5.3941960214247511077e+3,
        2.1213794301586595867e+4, 3.9307895800092710610e+4, 2.8729085735721942674e+4, 5.2264952788528545610e+3
    };

    @SuppressWarnings("FloatingPointLiteralPrecision") // as printed
    static final double[] C = {
        1.42343711074968357734e0, 4.63033784615654529590e0, 5.76949722146069140550e0, 3.64784832476320460504e0,
        1.27045825245236838258e0, 2.41780725177450611770e-1, 2.27238449892691845833e-2, 7.74545014278341407640e-4
    };

    @SuppressWarnings("FloatingPointLiteralPrecision") // as printed
    static final double[] D = {
        1.0, 2.05319162663775882187e0, 1.67638483018380384940e0, 6.89767334985100004550e-1,
        1.48103976427480074590e-1, 1.51986665636164571966e-2, 5.47593808499534494600e-4, 1.05075007164441684324e-9
    };

    @SuppressWarnings("FloatingPointLiteralPrecision") // as printed
    static final double[] E = {
        6.65790464350110377720e0, 5.46378491116411436990e0, 1.78482653991729133580e0, 2.96560571828504891230e-1,
        2.65321895265761230930e-2, 1.24266094738807843860e-3, 2.71155556874348757815e-5, 2.01033439929228813265e-7
    };

    @SuppressWarnings("FloatingPointLiteralPrecision") // as printed
    static final double[] F = {
        1.0, 5.99832206555887937690e-1, 1.36929880922735805310e-1, 1.48753612908506148525e-2,
        7.86869131145613259100e-4, 1.84631831751005468180e-5, 1.42151175831644588870e-7, 2.04426310338993978564e-15
    };

    private static final double CENTRE = 0.425;
    private static final double CENTRE_SQUARED = 0.180625;
    private static final double TAIL_SHIFT = 1.6;
    private static final double FAR_TAIL = 5;

    private StandardNormal() {}

    /**
     * The value below which a normal variable falls with the given probability.
     *
     * <pre>
     * q = p - 1/2
     * |q| &lt;= 0.425:  z = q A(r)/B(r),    r = 0.180625 - q^2
     * otherwise:     z = C(r-1.6)/D(r-1.6) or, beyond r = 5, E(r-5)/F(r-5),   r = sqrt(-ln min(p, 1-p))
     * </pre>
     *
     * <p>Accurate to about 1 part in 1e16.
     *
     * @param probability in (0, 1), ends excluded
     * @return standard normal deviate
     * @source Wichura 1988, Algorithm AS 241 (PPND16), Appl. Statist. 37, 477-484
     * @validity 0 &lt; p &lt; 1
     * @checkvalue p = 0.25: -0.6744897501960817; p = 0.001: -3.090232306167814; p = 1e-20: -9.262340089798408
     */
    public static double quantile(double probability) {
        if (!(probability > 0 && probability < 1)) {
            throw new IllegalArgumentException("Probability is " + probability + "; it must lie between 0 and 1");
        }
        double q = probability - 0.5;
        if (Math.abs(q) <= CENTRE) {
            double r = CENTRE_SQUARED - q * q;
            return q * polynomial(A, r) / polynomial(B, r);
        }
        double r = Math.sqrt(-StrictMath.log(q < 0 ? probability : 1 - probability));
        double size = r <= FAR_TAIL
                ? polynomial(C, r - TAIL_SHIFT) / polynomial(D, r - TAIL_SHIFT)
                : polynomial(E, r - FAR_TAIL) / polynomial(F, r - FAR_TAIL);
        return q < 0 ? -size : size;
    }

    /**
     * Probability that a normal variable falls below a value.
     *
     * <pre>Φ(z) = erfc(-z / √2) / 2</pre>
     *
     * @param deviate z
     * @source the complementary error function of the mathematics library
     * @validity any number; the lower tail to about 1e-13 of itself down to z = -37
     * @checkvalue Φ(1) = 0.841344746068543, Φ(-3) = 1.349898032e-3 (Abramowitz and Stegun 1964, table 26.1)
     */
    public static double cumulative(double deviate) {
        return 0.5 * Erf.erfc(-deviate / Math.sqrt(2));
    }

    private static double polynomial(double[] coefficients, double x) {
        double sum = 0;
        for (int i = coefficients.length - 1; i >= 0; i--) {
            sum = sum * x + coefficients[i];
        }
        return sum;
    }
}
