package org.tidewright.seawater.teos10;

import org.tidewright.seawater.unit.Unit;

/**
 * Heat content told as a temperature: unlike temperature itself it mixes like salt. At S = 35 and 25 degC the two are
 * the same within 1e-5 degC; at other salinities they part by up to some tenths.
 */
public final class ConservativeTemperature {
    /** The specific heat that makes it a temperature, exact by definition. */
    @Unit("J/(kg*K)")
    public static final double SPECIFIC_HEAT = 3991.86795711963;

    private ConservativeTemperature() {}

    /**
     * Conservative temperature of water at the surface.
     *
     * <pre>Theta = h(S_A, t) / 3991.86795711963 J/(kg K)</pre>
     *
     * with h the enthalpy at sea-surface pressure, a polynomial in x and y of {@link GibbsSeawater}.
     *
     * @param temperature in-situ temperature, ITS-90
     * @param practicalSalinity PSS-78, reference composition
     * @return conservative temperature, ITS-90
     * @source IOC, SCOR and IAPSO 2010, Manuals and Guides 56, eq. 3.3.1 and appendices G and H
     * @validity as {@link GibbsSeawater#density}
     */
    @Unit("degC")
    public static double fromInSitu(@Unit("degC") double temperature, @Unit("1") double practicalSalinity) {
        double xx = GibbsSeawater.scaledSalinity(practicalSalinity);
        double x = Math.sqrt(xx);
        double y = GibbsSeawater.scaledTemperature(temperature);
        double ofWater = -50.91091728474331 - y * 18.30489878927802;
        ofWater = 545.7340497931629 + y * ofWater;
        ofWater = -1536.6644434977543 + y * ofWater;
        ofWater = 2574.2164453821433 + y * ofWater;
        ofWater = -2735.2785605119625 + y * ofWater;
        ofWater = 168776.46138048015 + y * ofWater;
        ofWater = 61.01362420681071 + y * ofWater;
        double ofSquare = 369.4389437509002 + y * (-33.83664947895248 - y * 9.987880382780322);
        ofSquare = 936.3206544460336 + y * (-942.7827304544439 + y * ofSquare);
        ofSquare = -1687.914374187449
                + x * (246.9598888781377 + x * (123.59576582457964 - x * 48.5891069025409))
                + y * ofSquare;
        double ofRoot = 248.39476522971285 + y * (-3.871557904936333 - y * 2.6268019854268356);
        ofRoot = 937.2099110620707 + y * (588.1802812170108 + y * ofRoot) + x * ofSquare;
        double ofSalt = 465.28655623826234 + y * (-0.6370820302376359 - y * 10.650848542359153);
        ofSalt = 3734.858026725145 + y * (-2046.7671145057618 + y * ofSalt);
        ofSalt = 268.5520265845071 + y * (-12019.028203559312 + y * ofSalt) + x * ofRoot;
        return (ofWater + xx * ofSalt) / SPECIFIC_HEAT;
    }
}
