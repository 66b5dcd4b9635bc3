package org.tidewright.twin.law.structure;

import java.util.OptionalDouble;
import org.tidewright.seawater.range.Bounds;
import org.tidewright.seawater.unit.Gravity;
import org.tidewright.seawater.unit.Unit;

/**
 * An upright pane of a tank, filled to its top: an estimate for comparison; the maker's table decides.
 *
 * @param length a, between the panes that hold its sides
 * @param height b, from the foot to the top
 * @param top how its upper edge is held
 */
public record GlassPane(@Unit("m") double length, @Unit("m") double height, TopEdge top) {
    /**
     * Length over height beyond which a pane with a free top is not computed: on hinged edges its stress has no end to
     * its growth, while real tanks live from what the silicone holds.
     */
    @Unit("1")
    public static final double GREATEST_RIMLESS_ASPECT = 2.5;

    public GlassPane {
        Bounds.positive(length, "m", "length of the pane");
        Bounds.positive(height, "m", "height of the pane");
        Bounds.within(length / height, "1", 0.05, 20, "length over height of the pane");
    }

    /** What can be said of a pane. */
    public sealed interface Assessment permits Estimate, Refused {}

    /**
     * No number: brace it, or take the maker's table.
     *
     * @param reason in words for the reader
     */
    public record Refused(String reason) implements Assessment {}

    /**
     * Stress and deflection per load, by linear plate theory.
     *
     * @param footPressure q0
     * @param height b
     * @param coefficients of the plate
     * @source see {@link PlateCoefficients}
     * @validity deflection up to half the thickness; beyond it the true deflection is smaller
     */
    public record Estimate(
            @Unit("Pa") double footPressure, @Unit("m") double height, PlateCoefficients coefficients)
            implements Assessment {
        /**
         * Least thickness for a stress.
         *
         * <pre>t = b sqrt(beta q0 / sigma)</pre>
         *
         * @param allowableStress sigma; {@link Glass#ALLOWABLE_STRESS}
         */
        @Unit("m")
        public double leastThickness(@Unit("Pa") double allowableStress) {
            Bounds.positive(allowableStress, "Pa", "allowable stress");
            return height * Math.sqrt(coefficients.stress() * footPressure / allowableStress);
        }

        /** Thinnest glass on sale for {@link Glass#ALLOWABLE_STRESS}; empty beyond the thickest. */
        @Unit("m")
        public OptionalDouble thicknessToBuy() {
            return Glass.soldThickness(leastThickness(Glass.ALLOWABLE_STRESS));
        }

        /**
         * Greatest principal stress at a thickness.
         *
         * <pre>sigma = beta q0 b^2 / t^2</pre>
         */
        @Unit("Pa")
        public double stress(@Unit("m") double thickness) {
            Bounds.positive(thickness, "m", "thickness");
            return coefficients.stress() * footPressure * height * height / (thickness * thickness);
        }

        /** {@link Glass#BENDING_STRENGTH} over the greatest stress. */
        @Unit("1")
        public double safetyFactor(@Unit("m") double thickness) {
            return Glass.BENDING_STRENGTH / stress(thickness);
        }

        /**
         * Greatest deflection at a thickness.
         *
         * <pre>w = alpha q0 b^4 / (E t^3)</pre>
         */
        @Unit("m")
        public double deflection(@Unit("m") double thickness) {
            Bounds.positive(thickness, "m", "thickness");
            return coefficients.deflection()
                    * footPressure
                    * Math.pow(height, 4)
                    / (Glass.YOUNGS_MODULUS * Math.pow(thickness, 3));
        }

        /** Whether the deflection stays below half the thickness, as the theory asks. */
        public boolean withinLinearTheory(@Unit("m") double thickness) {
            return deflection(thickness) <= thickness / 2;
        }
    }

    /**
     * Stress and deflection of the pane under water of a density, or why there is none.
     *
     * @param density of the water
     */
    public Assessment assess(@Unit("kg/m^3") double density) {
        if (top == TopEdge.FREE && length / height > GREATEST_RIMLESS_ASPECT) {
            return new Refused("Without a brace a pane more than " + GREATEST_RIMLESS_ASPECT
                    + " times as long as high is beyond this theory: brace it or take the maker's table.");
        }
        PlateCoefficients coefficients = PlateCoefficients.underWater(length / height, Glass.POISSON_RATIO, top);
        return new Estimate(footPressure(density), height, coefficients);
    }

    /**
     * Pressure at the foot of the pane.
     *
     * <pre>q0 = rho g b</pre>
     *
     * @param density rho of the water
     * @source hydrostatics
     */
    @Unit("Pa")
    public double footPressure(@Unit("kg/m^3") double density) {
        return Bounds.positive(density, "kg/m^3", "density of the water") * Gravity.STANDARD * height;
    }

    /**
     * Pull per metre that a brace along the top must hold.
     *
     * <pre>R = q0 b / 6</pre>
     *
     * @param density of the water
     * @source statics of a strip hinged at foot and top under a triangular load; the bound for a long pane
     * @checkvalue 6020 Pa, 0.60 m: 602 N/m
     */
    @Unit("N/m")
    public double braceReaction(@Unit("kg/m^3") double density) {
        return footPressure(density) * height / 6;
    }
}
