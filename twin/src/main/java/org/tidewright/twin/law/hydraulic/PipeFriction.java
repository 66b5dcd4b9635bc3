package org.tidewright.twin.law.hydraulic;

import org.tidewright.seawater.range.Bounds;
import org.tidewright.seawater.unit.Unit;

/**
 * The Darcy friction factor f of a round pipe: head lost = f (L/d) v^2 / (2g).
 *
 * <p>{@link #churchill} covers every flow from rest and is the one the twin uses. The others hold for turbulent flow
 * only and are here to be compared with it.
 */
public final class PipeFriction {
    /** Roughness of clean plastic pipe; common practice. */
    @Unit("m")
    public static final double CLEAN_PLASTIC = 1.5e-6;

    /** Least roughness of a plastic pipe after a year of film and worms; common practice. */
    @Unit("m")
    public static final double FOULED_LEAST = 50e-6;

    /** Greatest roughness of a plastic pipe after a year of film and worms; common practice. */
    @Unit("m")
    public static final double FOULED_MOST = 300e-6;

    /** What ribs do to the friction factor of a hose, 2 to 3 times; common practice. */
    @Unit("1")
    public static final double RIBBED_HOSE_MULTIPLIER = 2.5;

    private static final double SURELY_LAMINAR = 10;

    private PipeFriction() {}

    /**
     * Reynolds number v d / nu.
     *
     * @source definition
     */
    @Unit("1")
    public static double reynolds(
            @Unit("m/s") double speed, @Unit("m") double bore, @Unit("m^2/s") double kinematicViscosity) {
        return Math.abs(speed) * bore / Bounds.positive(kinematicViscosity, "m^2/s", "kinematic viscosity");
    }

    /**
     * Friction factor of laminar flow.
     *
     * <pre>f = 64 / Re</pre>
     *
     * @source Hagen-Poiseuille, exact
     * @validity Re below about 2000-2300
     */
    @Unit("1")
    public static double laminar(@Unit("1") double reynolds) {
        return 64 / Bounds.positive(reynolds, "1", "Reynolds number");
    }

    /**
     * Friction factor at any Reynolds number, explicit.
     *
     * <pre>
     * A = (2.457 ln(1 / ((7/Re)^0.9 + 0.27 e/d)))^16,   B = (37530/Re)^16
     * f = 8 ((8/Re)^12 + (A + B)^-1.5)^(1/12)
     * </pre>
     *
     * @param reynolds Re
     * @param relativeRoughness e/d
     * @source Churchill 1977, Chem. Eng. 84 (24), 91-92
     * @validity all Re; within 2.5 % of Colebrook from Re 4000; between 2000 and 4000 no formula is reliable
     * @checkvalue Re = 1e5, e/d = 1e-4: 0.018462624566
     */
    @Unit("1")
    public static double churchill(@Unit("1") double reynolds, @Unit("1") double relativeRoughness) {
        if (!(reynolds > SURELY_LAMINAR)) {
            // Here the other two terms are below 1e-80 of the first, and at rest they would overflow.
            return laminar(reynolds);
        }
        double a = power16(2.457 * Math.log(1 / (Math.pow(7 / reynolds, 0.9) + 0.27 * relativeRoughness)));
        double b = power16(37530 / reynolds);
        double sum = a + b;
        double laminarTerm = power12(8 / reynolds);
        return 8 * Math.cbrt(Math.sqrt(Math.sqrt(laminarTerm + 1 / (sum * Math.sqrt(sum)))));
    }

    private static double power12(double x) {
        double x2 = x * x;
        double x4 = x2 * x2;
        return x4 * x4 * x4;
    }

    private static double power16(double x) {
        double x2 = x * x;
        double x4 = x2 * x2;
        double x8 = x4 * x4;
        return x8 * x8;
    }

    /**
     * Friction factor of turbulent flow, explicit.
     *
     * <pre>f = 0.25 / (log10(e/(3.7 d) + 5.74/Re^0.9))^2</pre>
     *
     * @param reynolds Re
     * @param relativeRoughness e/d
     * @source Swamee and Jain 1976, J. Hydraul. Div. ASCE 102, 657-664
     * @validity Re 5e3 to 1e8, e/d 1e-6 to 1e-2 (from memory)
     * @checkvalue Re = 1e5, e/d = 1e-4: 0.01845242
     */
    @Unit("1")
    public static double swameeJain(@Unit("1") double reynolds, @Unit("1") double relativeRoughness) {
        requireTurbulentInputs(reynolds, relativeRoughness);
        double logarithm = Math.log10(relativeRoughness / 3.7 + 5.74 / Math.pow(reynolds, 0.9));
        return 0.25 / (logarithm * logarithm);
    }

    /**
     * Friction factor of turbulent flow, explicit.
     *
     * <pre>1/sqrt(f) = -1.8 log10((e/(3.7 d))^1.11 + 6.9/Re)</pre>
     *
     * @param reynolds Re
     * @param relativeRoughness e/d
     * @source Haaland 1983, J. Fluids Eng. 105, 89-90
     * @validity Re 4e3 to 1e8, e/d 1e-6 to 5e-2 (from memory); within 1.5 % of Colebrook
     * @checkvalue Re = 1e5, e/d = 1e-4: 0.018265053
     */
    @Unit("1")
    public static double haaland(@Unit("1") double reynolds, @Unit("1") double relativeRoughness) {
        requireTurbulentInputs(reynolds, relativeRoughness);
        double inverseRoot = -1.8 * Math.log10(Math.pow(relativeRoughness / 3.7, 1.11) + 6.9 / reynolds);
        return 1 / (inverseRoot * inverseRoot);
    }

    /**
     * Friction factor of turbulent flow, implicit; solved by Newton's method to the last digits.
     *
     * <pre>1/sqrt(f) = -2 log10(e/(3.7 d) + 2.51/(Re sqrt(f)))</pre>
     *
     * @param reynolds Re
     * @param relativeRoughness e/d
     * @source Colebrook 1939, J. Inst. Civ. Eng. 11, 133-156
     * @validity Re from 4000
     * @checkvalue Re = 1e5, e/d = 1e-4: 0.018513866077
     */
    @Unit("1")
    public static double colebrook(@Unit("1") double reynolds, @Unit("1") double relativeRoughness) {
        double x = 1 / Math.sqrt(haaland(reynolds, relativeRoughness));
        for (int i = 0; i < 8; i++) {
            double argument = relativeRoughness / 3.7 + 2.51 * x / reynolds;
            double value = x + 2 * Math.log10(argument);
            double slope = 1 + 2 / Math.log(10) * 2.51 / reynolds / argument;
            double change = value / slope;
            x -= change;
            if (Math.abs(change) < 1e-15 * x) {
                break;
            }
        }
        return 1 / (x * x);
    }

    private static void requireTurbulentInputs(double reynolds, double relativeRoughness) {
        Bounds.within(reynolds, "1", 2000, 1e12, "Reynolds number of a turbulent law");
        Bounds.within(relativeRoughness, "1", 0, 1, "relative roughness");
    }
}
