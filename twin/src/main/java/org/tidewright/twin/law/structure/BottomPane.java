package org.tidewright.twin.law.structure;

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
        Require.positive("shorter side of the bottom pane", shorterSide, "m");
        Require.within("longer over shorter side of the bottom pane", longerSide / shorterSide, 1, 20, "(ratio)");
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
        Require.notNegative("pressure on the pane", pressure, "Pa");
        Require.positive("thickness", thickness, "m");
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
        Require.notNegative("pressure on the pane", pressure, "Pa");
        Require.positive("allowable stress", allowableStress, "Pa");
        return shorterSide * Math.sqrt(coefficients().stress() * pressure / allowableStress);
    }

    private PlateCoefficients coefficients() {
        return PlateCoefficients.underUniformLoad(longerSide / shorterSide, Glass.POISSON_RATIO);
    }
}
