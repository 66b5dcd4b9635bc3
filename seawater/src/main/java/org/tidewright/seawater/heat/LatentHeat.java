package org.tidewright.seawater.heat;

import org.tidewright.seawater.density.ConservativeTemperature;
import org.tidewright.seawater.density.Teos10;
import org.tidewright.seawater.range.Bounds;
import org.tidewright.seawater.range.FittedRange;
import org.tidewright.seawater.unit.Unit;

/** Heat that changes of phase take up. */
public final class LatentHeat {
    /** The range of evaporation into air; that of pure water alone reaches further. */
    public static final FittedRange FIT = Teos10.FIT;

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
     * (at 0 degC) to 0.14 % (at 40 degC) less: {@link #ofEvaporationIntoAir}.
     *
     * @param temperature of the evaporating water, ITS-90
     * @return heat per kilogram of water evaporated
     * @source Sharqawy, Lienhard and Zubair 2010, Desalin. Water Treat. 16, 354-380 (doi 10.5004/dwt.2010.1079), latent
     *     heat of pure water, with the unrounded coefficients its authors publish beside the paper (the printed four
     *     digits lie up to 0.005 % off)
     * @validity 0 to 200 degC; 0.01 % from the steam tables it was fitted to
     */
    @Unit("J/kg")
    public static double ofEvaporation(@Unit("degC") double temperature) {
        Bounds.waterTemperature(temperature);
        double t = temperature;
        return 2.5008991412e6
                + t * (-2.3691806479e3 + t * (2.6776439436e-1 + t * (-8.1027544602e-3 + t * -2.0799346624e-5)));
    }

    /**
     * Heat taken up by each kilogram of water that evaporates from seawater into air saturated with its vapour, at one
     * atmosphere, by TEOS-10.
     *
     * <pre>
     * h = sum of c_ij x^i y^j,   x = (S / 40)^(1/2),   y = Theta / 40 degC
     * </pre>
     *
     * with Theta the conservative temperature.
     *
     * @param temperature in-situ temperature of the evaporating water, ITS-90
     * @param practicalSalinity PSS-78
     * @return heat per kilogram of water evaporated
     * @source IOC, SCOR and IAPSO 2010, Manuals and Guides 56, eq. 3.39.7, in the polynomial of the TEOS-10 toolbox
     * @validity freezing point to 40 degC, S 0 to 42: {@link #FIT}
     * @checkvalue S_A = 34.7118 g/kg, 28.7856 degC: 2429882.982734836 J/kg (TEOS-10 toolbox)
     */
    @Unit("J/kg")
    public static double ofEvaporationIntoAir(@Unit("degC") double temperature, @Unit("1") double practicalSalinity) {
        double y = ConservativeTemperature.fromInSitu(temperature, practicalSalinity) / 40;
        double x = Math.sqrt(practicalSalinity / 40);
        double x0 =
                -1.207006482532330e3 + y * (5.731307337366114e2 + y * (-3.233571307223379e2 + y * 1.021046205356775e2));
        x0 = 2.499065844825125e6 + y * (-9.096800915831875e4 + y * (1.894281502222415e1 + y * x0));
        double x1 = 1.186568375570869e1 + y * (8.460780175632090e1 + y * -2.389853928747630e1);
        x1 = -1.544590633515099e-1 + y * (4.589984751248335e1 + y * (-1.104989199195898e2 + y * x1));
        double x2 = 2.519335841663499e3 + y * (-1.541083032068263e3 + y * 1.797443329095446e2);
        x2 = 1.665513670736000e2 + y * (-6.631757848479068e3 + y * x2);
        double x3 =
                1.192559661490269e3 + y * (7.437431482069087e2 + y * (-6.399956483223386e2 + y * 7.510134932437941e2));
        double x4 = -3.148710097513822e3 + y * (1.062383995581363e3 + y * -8.062279018001309e2);
        double x5 = 1.213387273240204e3 + y * 4.351585544019463e1;
        double x6 = -2.031538422351553e2;
        return x0 + x * (x1 + x * (x2 + x * (x3 + x * (x4 + x * (x5 + x * x6)))));
    }
}
