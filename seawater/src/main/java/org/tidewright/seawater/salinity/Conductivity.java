package org.tidewright.seawater.salinity;

import org.tidewright.seawater.range.Bounds;
import org.tidewright.seawater.range.FittedRange;
import org.tidewright.seawater.unit.TemperatureScale;
import org.tidewright.seawater.unit.Unit;

/**
 * Electrical conductivity of seawater and its practical salinity, PSS-78, at the surface. The practical salinity scale
 * is defined by conductivity: this is the measurement all others are compared with. 1 S/m is 10 mS/cm.
 */
public final class Conductivity {
    /** Conductivity of seawater of practical salinity 35 at 15 degC on IPTS-68 and one atmosphere. */
    @Unit("S/m")
    public static final double OF_STANDARD = 4.2914;

    /** The range the scale is defined on. */
    public static final FittedRange FIT = new FittedRange(-2, 35, 2, 42);

    /** What the saltiest and hottest water of the bounds conducts, rounded up. */
    @Unit("S/m")
    private static final double HIGHEST = 30;

    /** Below it the correction for dilute water applies. */
    @Unit("1")
    private static final double DILUTE = 2;

    /** Root of the ratio R_t that no salinity within the bounds reaches. */
    private static final double HIGHEST_ROOT = 2.2;

    private static final int MOST_STEPS = 100;

    private Conductivity() {}

    /**
     * Practical salinity from conductivity.
     *
     * <pre>
     * R   = C / C(35, 15 degC)        r_t = sum of c_i t^i        R_t = R / r_t        x = sqrt(R_t)
     * S_P = sum of a_i x^i + (t - 15) / (1 + 0.0162 (t - 15)) sum of b_i x^i
     * </pre>
     *
     * with t on IPTS-68. Below S_P = 2, less the correction of Hill et al. for dilute water
     *
     * <pre>0.008 / (1 + 1.5 X + X^2) + 0.0005 f(t) / (1 + Y^(1/2) + Y + Y^(3/2)),    X = 400 R_t,  Y = 100 R_t</pre>
     *
     * and, as TEOS-10 does, times the factor that lets both meet at 2; never below 0.
     *
     * @param conductivity at the water's own temperature, not compensated to 25 degC
     * @param temperature ITS-90
     * @return practical salinity
     * @source Perkin and Lewis 1980, IEEE J. Ocean. Eng. 5, 9-16 (doi 10.1109/JOE.1980.1145441); UNESCO 1981, Tech.
     *     Pap. Mar. Sci. 36; Hill, Dauphinee and Woods 1986, IEEE J. Ocean. Eng. 11, 109-112, joined at 2 as in the
     *     TEOS-10 toolbox
     * @validity -2 to 35 degC, S 2 to 42: {@link #FIT}; with the correction from S 0
     * @checkvalue ratio 1 at 15 degC on IPTS-68: 35.000000
     */
    @Unit("1")
    public static double toPractical(@Unit("S/m") double conductivity, @Unit("degC") double temperature) {
        Bounds.within(conductivity, "S/m", 0, HIGHEST, "conductivity", "is it in mS/cm or uS/cm? 1 S/m is 10 mS/cm");
        Bounds.waterTemperature(temperature);
        double t = TemperatureScale.ipts68(temperature);
        double practicalSalinity = practical(Math.sqrt(conductivity / OF_STANDARD / temperatureRatio(t)), t);
        Bounds.practicalSalinity(practicalSalinity);
        return practicalSalinity;
    }

    /**
     * Conductivity of water of a practical salinity, the inverse of {@link #toPractical}: Newton's steps, and halves of
     * the interval where one leads out of it or is not half of the one before.
     *
     * @param practicalSalinity PSS-78
     * @param temperature ITS-90
     * @return conductivity at that temperature
     * @source as {@link #toPractical}
     * @validity as {@link #toPractical}
     * @checkvalue S 40, 30 degC on IPTS-68: ratio 1.529967
     */
    @Unit("S/m")
    public static double fromPractical(@Unit("1") double practicalSalinity, @Unit("degC") double temperature) {
        Bounds.practicalSalinity(practicalSalinity);
        Bounds.waterTemperature(temperature);
        if (practicalSalinity == 0) {
            return 0;
        }
        double t = TemperatureScale.ipts68(temperature);
        double low = 0;
        double high = HIGHEST_ROOT;
        double x = Math.sqrt(practicalSalinity / 35);
        double moved = HIGHEST_ROOT;
        for (int step = 0; step < MOST_STEPS; step++) {
            double excess = practical(x, t) - practicalSalinity;
            if (excess > 0) {
                high = x;
            } else {
                low = x;
            }
            double next = x - excess / slope(x, t);
            boolean astray = !(next > low && next < high) || Math.abs(next - x) > moved / 2;
            if (astray) {
                next = (low + high) / 2;
            }
            moved = Math.abs(next - x);
            if (Math.abs(next - x) <= Math.ulp(x)) {
                break;
            }
            x = next;
        }
        return OF_STANDARD * temperatureRatio(t) * x * x;
    }

    /** r_t: conductivity of S = 35 at a temperature, as a share of that at 15 degC. */
    private static double temperatureRatio(double t) {
        return 0.6766097 + t * (2.00564e-2 + t * (1.104259e-4 + t * (-6.9698e-7 + t * 1.0031e-9)));
    }

    private static double practical(double x, double t) {
        double salinity = scale(x, t);
        return salinity < DILUTE ? Math.max(0, dilute(x, t) * DILUTE / dilute(rootAtDilute(t), t)) : salinity;
    }

    /** PSS-78 as it was defined. */
    private static double scale(double x, double t) {
        double a = 0.0080 + x * (-0.1692 + x * (25.3851 + x * (14.0941 + x * (-7.0261 + x * 2.7081))));
        double b = 0.0005 + x * (-0.0056 + x * (-0.0066 + x * (-0.0375 + x * (0.0636 + x * -0.0144))));
        return a + apartFrom15(t) * b;
    }

    private static double slope(double x, double t) {
        double a = -0.1692 + x * (2 * 25.3851 + x * (3 * 14.0941 + x * (4 * -7.0261 + x * 5 * 2.7081)));
        double b = -0.0056 + x * (2 * -0.0066 + x * (3 * -0.0375 + x * (4 * 0.0636 + x * 5 * -0.0144)));
        return a + apartFrom15(t) * b;
    }

    /** The scale with its correction for dilute water. */
    private static double dilute(double x, double t) {
        double big = 400 * x * x;
        double y = 10 * x; // Y^(1/2)
        return scale(x, t) - 0.008 / (1 + big * (1.5 + big)) - 0.0005 * apartFrom15(t) / (1 + y * (1 + y * (1 + y)));
    }

    /** Where the scale says 2: Newton's steps, each of which doubles the digits. */
    private static double rootAtDilute(double t) {
        double x = 0.2624; // at 15 degC
        for (int step = 0; step < 4; step++) {
            x -= (scale(x, t) - DILUTE) / slope(x, t);
        }
        return x;
    }

    private static double apartFrom15(double t) {
        return (t - 15) / (1 + 0.0162 * (t - 15));
    }
}
