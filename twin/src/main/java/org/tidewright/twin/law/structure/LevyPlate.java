package org.tidewright.twin.law.structure;

import org.tidewright.seawater.range.Bounds;
import org.tidewright.seawater.unit.Unit;

/**
 * Bending of a thin rectangular plate, simply supported on both sides and at the foot, its top free or supported, under
 * a pressure that does not change along its length and runs straight from foot to top. Exact within Kirchhoff's theory:
 * the deflection is a sine series along the length whose every term solves the plate equation.
 *
 * <pre>
 * w(x, y) = sum over odd m of Y_m(y) sin(k x),   k = m pi / a
 * Y'''' - 2 k^2 Y'' + k^4 Y = 4 q(y) / (m pi D)
 * Y_m = 4 q(y) / (m pi D k^4) + (A + B k y) e^(-k y) + (C + E k (b - y)) e^(-k (b - y))
 * foot:  Y = 0, Y'' = 0
 * top, supported:  Y = 0, Y'' = 0
 * top, free:       Y'' - nu k^2 Y = 0,  Y''' - (2 - nu) k^2 Y' = 0
 * </pre>
 *
 * <p>Here in units of the plate: height b = 1, length a/b, greatest pressure q0 = 1, stiffness D = 1.
 *
 * @source Levy 1899; Timoshenko and Woinowsky-Krieger, Theory of Plates and Shells, 2nd ed., ch. 5
 * @validity deflection up to about half the thickness; beyond it membrane action makes the plate stiffer
 */
final class LevyPlate {
    /** Odd terms up to m = 159: what is left out of a moment is below 1e-5 of it. */
    private static final int TERMS = 80;

    private final double aspect;
    private final double poisson;
    private final double footPressure;
    private final double pressureRise;
    private final double[][] coefficients = new double[TERMS][];

    /**
     * A plate.
     *
     * @param aspect length over height, a/b
     * @param poisson Poisson's ratio
     * @param top how its upper edge is held
     * @param footPressure share of q0 at the foot
     * @param topPressure share of q0 at the top
     */
    LevyPlate(
            @Unit("1") double aspect,
            @Unit("1") double poisson,
            TopEdge top,
            @Unit("1") double footPressure,
            @Unit("1") double topPressure) {
        this.aspect = Bounds.within(aspect, "1", 0.05, 20, "length over height of the plate");
        this.poisson = Bounds.within(poisson, "1", 0, 0.5, "Poisson's ratio");
        this.footPressure = footPressure;
        this.pressureRise = topPressure - footPressure;
        for (int term = 0; term < TERMS; term++) {
            coefficients[term] = edgeTerms(waveNumber(term), loadTerm(term), top);
        }
    }

    private double waveNumber(int term) {
        return (2 * term + 1) * Math.PI / aspect;
    }

    /** 4 / (m pi k^4), the particular solution under q = 1. */
    private double loadTerm(int term) {
        double k = waveNumber(term);
        return 4 / ((2 * term + 1) * Math.PI * k * k * k * k);
    }

    /** A, B, C and E from the four edge conditions. */
    private double[] edgeTerms(double k, double load, TopEdge top) {
        double decay = Math.exp(-k);
        double[][] rows = new double[4][];
        // Y and Y''/k^2 at the foot; the columns are A, B, C, E, then the right-hand side.
        rows[0] = new double[] {1, 0, decay, k * decay, -load * footPressure};
        rows[1] = new double[] {1, -2, decay, (k - 2) * decay, 0};
        double[] deflection = {decay, k * decay, 1, 0, -load * (footPressure + pressureRise)};
        double[] curvature = {decay, (k - 2) * decay, 1, -2, 0};
        if (top == TopEdge.HELD) {
            rows[2] = deflection;
            rows[3] = curvature;
        } else {
            // Y'/k and Y'''/k^3 at the top; the straight pressure adds to Y' only.
            double[] slope = {-decay, (1 - k) * decay, 1, -1, -load * pressureRise / k};
            double[] third = {-decay, (3 - k) * decay, 1, -3, 0};
            rows[2] = combined(curvature, -poisson, deflection);
            rows[3] = combined(third, -(2 - poisson), slope);
        }
        return solved(rows);
    }

    private static double[] combined(double[] row, double factor, double[] other) {
        double[] sum = new double[row.length];
        for (int i = 0; i < row.length; i++) {
            sum[i] = row[i] + factor * other[i];
        }
        return sum;
    }

    /** Gauss' elimination with row exchange, four unknowns. */
    private static double[] solved(double[][] rows) {
        int n = rows.length;
        for (int column = 0; column < n; column++) {
            int pivot = column;
            for (int row = column + 1; row < n; row++) {
                if (Math.abs(rows[row][column]) > Math.abs(rows[pivot][column])) {
                    pivot = row;
                }
            }
            double[] exchanged = rows[column];
            rows[column] = rows[pivot];
            rows[pivot] = exchanged;
            for (int row = column + 1; row < n; row++) {
                double factor = rows[row][column] / rows[column][column];
                for (int i = column; i <= n; i++) {
                    rows[row][i] -= factor * rows[column][i];
                }
            }
        }
        double[] unknown = new double[n];
        for (int row = n - 1; row >= 0; row--) {
            double rest = rows[row][n];
            for (int i = row + 1; i < n; i++) {
                rest -= rows[row][i] * unknown[i];
            }
            unknown[row] = rest / rows[row][row];
        }
        return unknown;
    }

    /** Deflection and moments at a height, ready to be summed along the length. */
    Line lineAt(@Unit("1") double y) {
        double[] deflection = new double[TERMS];
        double[] slope = new double[TERMS];
        double[] curvature = new double[TERMS];
        for (int term = 0; term < TERMS; term++) {
            double k = waveNumber(term);
            double[] c = coefficients[term];
            double fromFoot = Math.exp(-k * y);
            double fromTop = Math.exp(-k * (1 - y));
            double foot = (c[0] + c[1] * k * y) * fromFoot;
            double topSide = (c[2] + c[3] * k * (1 - y)) * fromTop;
            deflection[term] = loadTerm(term) * (footPressure + pressureRise * y) + foot + topSide;
            slope[term] = loadTerm(term) * pressureRise + k * (c[1] * fromFoot - foot + topSide - c[3] * fromTop);
            curvature[term] = k * k * (foot - 2 * c[1] * fromFoot + topSide - 2 * c[3] * fromTop);
        }
        return new Line(deflection, slope, curvature);
    }

    /** The plate along one height. */
    final class Line {
        private final double[] deflection;
        private final double[] slope;
        private final double[] curvature;

        private Line(double[] deflection, double[] slope, double[] curvature) {
            this.deflection = deflection;
            this.slope = slope;
            this.curvature = curvature;
        }

        /** w D / (q0 b^4) at a distance from one side, as a share of the length. */
        double deflectionAt(double xShare) {
            double w = 0;
            for (int term = 0; term < TERMS; term++) {
                w += deflection[term] * Math.sin(waveNumber(term) * xShare * aspect);
            }
            return w;
        }

        /** Greatest principal moment over q0 b^2; six times it is the stress coefficient. */
        double principalMomentAt(double xShare) {
            double alongX = 0;
            double alongY = 0;
            double twist = 0;
            for (int term = 0; term < TERMS; term++) {
                double k = waveNumber(term);
                double sine = Math.sin(k * xShare * aspect);
                double cosine = Math.cos(k * xShare * aspect);
                alongX += k * k * deflection[term] * sine;
                alongY -= curvature[term] * sine;
                twist += k * slope[term] * cosine;
            }
            double momentX = alongX + poisson * alongY;
            double momentY = alongY + poisson * alongX;
            double momentXY = (1 - poisson) * twist;
            double half = (momentX - momentY) / 2;
            return Math.abs((momentX + momentY) / 2) + Math.sqrt(half * half + momentXY * momentXY);
        }
    }
}
