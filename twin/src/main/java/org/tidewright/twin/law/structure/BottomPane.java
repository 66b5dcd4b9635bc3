package org.tidewright.twin.law.structure;

import org.tidewright.seawater.range.Bounds;
import org.tidewright.seawater.unit.Unit;

/**
 * A bottom pane that stands on a rim or frame and is held along its four edges, under one pressure everywhere. Bedded
 * on its whole area it does not bend at all and needs none of this.
 *
 * @param longerSide of the pane
 * @param shorterSide of the pane
 * @source Kirchhoff's plate theory, see {@link PlateCoefficients#underUniformLoad}
 * @validity deflection up to half the thickness
 */
public record BottomPane(
        @Unit("m") double longerSide, @Unit("m") double shorterSide) {
    public BottomPane {
        Bounds.positive(shorterSide, "m", "shorter side of the bottom pane");
        Bounds.within(longerSide / shorterSide, "1", 1, 20, "longer over shorter side of the bottom pane");
    }

    /**
     * Greatest stress.
     *
     * <pre>sigma = beta q b^2 / t^2</pre>
     *
     * @param pressure q on the pane, rho g H
     * @param thickness t
     */
    @Unit("Pa")
    public double stress(@Unit("Pa") double pressure, @Unit("m") double thickness) {
        Bounds.notNegative(pressure, "Pa", "pressure on the pane");
        Bounds.positive(thickness, "m", "thickness");
        return coefficients().stress() * pressure * shorterSide * shorterSide / (thickness * thickness);
    }

    /**
     * Least thickness for a stress.
     *
     * <pre>t = b sqrt(beta q / sigma)</pre>
     *
     * @param pressure q on the pane
     * @param allowableStress sigma; {@link Glass#ALLOWABLE_STRESS}
     */
    @Unit("m")
    public double leastThickness(@Unit("Pa") double pressure, @Unit("Pa") double allowableStress) {
        Bounds.notNegative(pressure, "Pa", "pressure on the pane");
        Bounds.positive(allowableStress, "Pa", "allowable stress");
        return shorterSide * Math.sqrt(coefficients().stress() * pressure / allowableStress);
    }

    private PlateCoefficients coefficients() {
        return PlateCoefficients.underUniformLoad(longerSide / shorterSide, Glass.POISSON_RATIO);
    }
}
