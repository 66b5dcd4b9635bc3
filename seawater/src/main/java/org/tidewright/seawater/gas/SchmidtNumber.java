package org.tidewright.seawater.gas;

import org.tidewright.seawater.range.Bounds;
import org.tidewright.seawater.range.FittedRange;
import org.tidewright.seawater.unit.Unit;

/** Kinematic viscosity of water over the diffusivity of a gas in it: the slower a gas diffuses, the larger. */
public final class SchmidtNumber {
    /** The range of the polynomials; they are for seawater of S = 35. */
    public static final FittedRange FIT = new FittedRange(-2, 40, 35, 35);

    private SchmidtNumber() {}

    /**
     * Schmidt number of oxygen in seawater of S = 35.
     *
     * <pre>Sc = 1920.4 - 135.6 t + 5.2122 t^2 - 0.10939 t^3 + 9.3777e-4 t^4</pre>
     *
     * @param temperature ITS-90
     * @return Schmidt number
     * @source Wanninkhof 2014, Limnol. Oceanogr. Methods 12, 351-362 (doi 10.4319/lom.2014.12.351), table 1
     * @validity -2 to 40 degC, S = 35: {@link #FIT}; fresh water is 6 to 8 % lower
     * @checkvalue 20 degC: 568
     */
    @Unit("1")
    public static double ofOxygen(@Unit("degC") double temperature) {
        Bounds.waterTemperature(temperature);
        double t = temperature;
        return 1920.4 + t * (-135.6 + t * (5.2122 + t * (-0.10939 + t * 9.3777e-4)));
    }

    /**
     * Schmidt number of carbon dioxide in seawater of S = 35.
     *
     * <pre>Sc = 2116.8 - 136.25 t + 4.7353 t^2 - 0.092307 t^3 + 7.555e-4 t^4</pre>
     *
     * @param temperature ITS-90
     * @return Schmidt number
     * @source Wanninkhof 2014, Limnol. Oceanogr. Methods 12, 351-362 (doi 10.4319/lom.2014.12.351), table 1
     * @validity -2 to 40 degC, S = 35: {@link #FIT}; 600 in fresh water of 20 degC, 10 % lower
     * @checkvalue 20 degC: 668
     */
    @Unit("1")
    public static double ofCarbonDioxide(@Unit("degC") double temperature) {
        Bounds.waterTemperature(temperature);
        double t = temperature;
        return 2116.8 + t * (-136.25 + t * (4.7353 + t * (-0.092307 + t * 7.555e-4)));
    }
}
