package org.tidewright.seawater.heat;

import org.tidewright.seawater.range.Bounds;
import org.tidewright.seawater.unit.Unit;

/** Heat that changes of phase take up. */
public final class LatentHeat {
    private LatentHeat() {}

    /**
     * Heat taken up by each kilogram of water that evaporates. Salt changes it by about 0.01 %, so none is asked
     * for: what leaves seawater is water, and the share (1 - S) by which the source multiplies for seawater is heat per
     * kilogram of <em>solution</em>, 4 % too low for an evaporation loss.
     *
     * <pre>
     * h = 2.5008991412e6 - 2.3691806479e3 t + 2.6776439436e-1 t^2 - 8.1027544602e-3 t^3 - 2.0799346624e-5 t^4
     * </pre>
     *
     * This is saturated vapour alone over its liquid. For evaporation into air at one atmosphere TEOS-10 gives 0.08 %
     * (at 0 degC) to 0.14 % (at 40 degC) less.
     *
     * @param temperature of the evaporating water, ITS-90
     * @return heat per kilogram of water evaporated
     * @source Sharqawy, Lienhard and Zubair 2010, Desalin. Water Treat. 16, 354-380, latent heat of pure water, with
     *     the unrounded coefficients its authors publish beside the paper (the printed four digits lie up to 0.005 %
     *     off)
     * @validity 0 to 200 degC; 0.01 % from the steam tables it was fitted to
     */
    @Unit("J/kg")
    public static double ofEvaporation(@Unit("degC") double temperature) {
        Bounds.waterTemperature(temperature);
        double t = temperature;
        return 2.5008991412e6
                + t * (-2.3691806479e3 + t * (2.6776439436e-1 + t * (-8.1027544602e-3 + t * -2.0799346624e-5)));
    }
}
