package org.tidewright.seawater.transport;

import org.tidewright.seawater.range.Bounds;
import org.tidewright.seawater.range.FittedRange;
import org.tidewright.seawater.salinity.AbsoluteSalinity;
import org.tidewright.seawater.unit.Unit;

/** Dynamic viscosity at one atmosphere. */
public final class Viscosity {
    /** The range of the measurements behind the equation; its salinities reach 150 g/kg. */
    public static final FittedRange FIT = new FittedRange(0, 180, 0, 149);

    private Viscosity() {}

    /**
     * Dynamic viscosity of seawater.
     *
     * <pre>
     * mu = mu_w (1 + A S + B S^2)
     * A = 1.541 + 1.998e-2 t - 9.52e-5 t^2
     * B = 7.974 - 7.561e-2 t + 4.724e-4 t^2
     * </pre>
     *
     * with S in kilograms of salt per kilogram of seawater.
     *
     * @param temperature ITS-90
     * @param practicalSalinity PSS-78, converted to {@linkplain AbsoluteSalinity absolute salinity} inside
     * @return dynamic viscosity
     * @source Sharqawy, Lienhard and Zubair 2010, Desalin. Water Treat. 16, 354-380 (doi 10.5004/dwt.2010.1079), eq.
     *     22, coefficients as printed
     * @validity 0 to 180 degC, 0 to 0.15 kg/kg: {@link #FIT}; 1.5 %
     */
    @Unit("Pa*s")
    public static double ofSeawater(@Unit("degC") double temperature, @Unit("1") double practicalSalinity) {
        double pureWater = ofPureWater(temperature);
        double s = AbsoluteSalinity.fromPractical(practicalSalinity) / 1000;
        double t = temperature;
        double a = 1.541 + t * (1.998e-2 + t * -9.52e-5);
        double b = 7.974 + t * (-7.561e-2 + t * 4.724e-4);
        return pureWater * (1 + s * (a + b * s));
    }

    /**
     * Dynamic viscosity of pure water.
     *
     * <pre>mu_w = 4.2844e-5 + 1 / (0.157 (t + 64.993)^2 - 91.296)</pre>
     *
     * @param temperature ITS-90
     * @return dynamic viscosity
     * @source Sharqawy, Lienhard and Zubair 2010, Desalin. Water Treat. 16, 354-380 (doi 10.5004/dwt.2010.1079), eq.
     *     23, fitted to IAPWS 2008
     * @validity 0 to 180 degC; 0.05 % from IAPWS 2008
     */
    @Unit("Pa*s")
    public static double ofPureWater(@Unit("degC") double temperature) {
        Bounds.waterTemperature(temperature);
        double shifted = temperature + 64.993;
        return 4.2844e-5 + 1 / (0.157 * shifted * shifted - 91.296);
    }
}
