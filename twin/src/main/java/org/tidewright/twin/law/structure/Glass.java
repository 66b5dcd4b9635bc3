package org.tidewright.twin.law.structure;

import java.util.OptionalDouble;
import org.tidewright.seawater.range.Bounds;
import org.tidewright.seawater.unit.Unit;

/** What the laws of panes need to know of annealed float glass. */
public final class Glass {
    /**
     * Density.
     *
     * @source EN 572 (from memory)
     */
    @Unit("kg/m^3")
    public static final double DENSITY = 2500;

    /**
     * Young's modulus.
     *
     * @source EN 572 (from memory)
     */
    @Unit("Pa")
    public static final double YOUNGS_MODULUS = 70e9;

    /**
     * Poisson's ratio.
     *
     * @source EN 572 gives 0.20 (from memory), handbooks up to 0.23
     */
    @Unit("1")
    public static final double POISSON_RATIO = 0.22;

    /**
     * Bending strength that tank makers' rules start from.
     *
     * @source common practice
     */
    @Unit("Pa")
    public static final double BENDING_STRENGTH = 19.2e6;

    /**
     * Safety factor of tank makers' rules on {@link #BENDING_STRENGTH}.
     *
     * @source common practice
     */
    @Unit("1")
    public static final double SAFETY_FACTOR = 3.8;

    /**
     * Stress allowed under load that never ends: 19.2 MPa / 3.8. The rules for glass in buildings come to 5.37 MPa:
     * 45 MPa x 0.29 (permanent load) / 1.8 (material) / 1.35 (load) with the factors of EN 16612, from memory.
     *
     * @source common practice
     * @checkvalue 5.053 MPa
     */
    @Unit("Pa")
    public static final double ALLOWABLE_STRESS = BENDING_STRENGTH / SAFETY_FACTOR;

    private static final double[] SOLD_THICKNESSES = {0.004, 0.005, 0.006, 0.008, 0.010, 0.012, 0.015, 0.019};

    private Glass() {}

    /**
     * Thinnest pane on sale that is no thinner than wanted.
     *
     * @param wanted least thickness
     * @return empty beyond 19 mm, the thickest
     * @source common practice: 4, 5, 6, 8, 10, 12, 15 and 19 mm are sold
     */
    @Unit("m")
    public static OptionalDouble soldThickness(@Unit("m") double wanted) {
        Bounds.positive(wanted, "m", "thickness wanted");
        for (double sold : SOLD_THICKNESSES) {
            if (sold >= wanted) {
                return OptionalDouble.of(sold);
            }
        }
        return OptionalDouble.empty();
    }
}
