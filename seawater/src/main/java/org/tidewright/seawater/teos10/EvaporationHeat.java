package org.tidewright.seawater.teos10;

import org.tidewright.seawater.unit.Unit;

/** Heat that evaporation from seawater into air at one atmosphere takes up. */
public final class EvaporationHeat {
    private EvaporationHeat() {}

    /**
     * Latent heat of evaporation, per kilogram of water that leaves: the enthalpy of vapour in saturated moist air less
     * the partial enthalpy of water in seawater.
     *
     * <p>A polynomial of 28 terms in x of {@link GibbsSeawater} and in Theta / 40 degC.
     *
     * @param temperature of the water, ITS-90
     * @param practicalSalinity PSS-78, reference composition
     * @return heat per kilogram of water evaporated
     * @source IOC, SCOR and IAPSO 2010, Manuals and Guides 56, section 3.39, with the fit of the TEOS-10 toolbox
     * @validity 0 to 40 degC, S 0 to 42
     * @checkvalue S_A = 34.7118 g/kg, 28.7856 degC: 2429882.98 J/kg (TEOS-10 toolbox)
     */
    @Unit("J/kg")
    public static double ofSeawater(@Unit("degC") double temperature, @Unit("1") double practicalSalinity) {
        double x = Math.sqrt(GibbsSeawater.scaledSalinity(practicalSalinity));
        double y = GibbsSeawater.TEMPERATURE_SCALE * ConservativeTemperature.fromInSitu(temperature, practicalSalinity);
        double ofSalt = 1.213387273240204e3 + 4.351585544019463e1 * y - 2.031538422351553e2 * x;
        ofSalt = -3.148710097513822e3 + y * (1.062383995581363e3 - 8.062279018001309e2 * y) + x * ofSalt;
        ofSalt = 1.192559661490269e3
                + y * (7.437431482069087e2 + y * (-6.399956483223386e2 + 7.510134932437941e2 * y))
                + x * ofSalt;
        ofSalt = 1.665513670736000e2 + y * (-6.631757848479068e3 + 2.519335841663499e3 * y) + x * ofSalt;
        ofSalt = -1.544590633515099e-1 + 4.589984751248335e1 * y + x * ofSalt;
        double ofHeat = -3.233571307223379e2 - 2.389853928747630e1 * x + 1.021046205356775e2 * y;
        ofHeat = 5.731307337366114e2 + x * (8.460780175632090e1 + 1.797443329095446e2 * x) + y * ofHeat;
        ofHeat = -1.207006482532330e3 + x * (1.186568375570869e1 - 1.541083032068263e3 * x) + y * ofHeat;
        ofHeat = 1.894281502222415e1 - 1.104989199195898e2 * x + y * ofHeat;
        ofHeat = -9.096800915831875e4 + y * ofHeat;
        return 2.499065844825125e6 + x * ofSalt + y * ofHeat;
    }
}
