package org.tidewright.twin.law.gas;

import org.tidewright.seawater.gas.SchmidtNumber;
import org.tidewright.seawater.range.Bounds;
import org.tidewright.seawater.unit.TemperatureScale;
import org.tidewright.seawater.unit.Unit;

/**
 * Carbon dioxide off rising air. A bubble hardly notices the oxygen it gives up; of carbon dioxide it holds so little
 * against what the water holds that it comes near rest with the water on its way, and then can take no more.
 */
public final class BubbleExchange {
    private static final double GAS = 8.31446261815324; // J/(mol K), CODATA 2018
    private static final double ATMOSPHERE = 101_325; // Pa

    private BubbleExchange() {}

    /**
     * Exchange of carbon dioxide as a flow of water brought to rest with the entering air.
     *
     * <pre>G_c = Q_a H (1 - exp(-G (Sc_o / Sc_c)^1/2 / (Q_a H))), H = 1 / (R T s)</pre>
     *
     * @param oxygenConductance G of oxygen, see {@link Bubbles#conductance}
     * @param airFlow Q_a
     * @param solubility s, dissolved carbon dioxide per atmosphere of it
     * @param temperature of the water, ITS-90
     * @return volume per time, never more than what the air flow can carry
     * @source plug flow of gas through well mixed water, as for bubble columns: Matter-Müller, Gujer and Giger 1981, Water
     *     Res. 15, 1271-1279, eq. 8
     * @validity bubbles small against the depth; chemical reaction in the film is left out
     */
    @Unit("m^3/s")
    public static double carbonDioxideConductance(
            @Unit("m^3/s") double oxygenConductance,
            @Unit("m^3/s") double airFlow,
            @Unit("mol/(m^3*atm)") double solubility,
            @Unit("degC") double temperature) {
        Bounds.waterTemperature(temperature);
        if (airFlow <= 0 || oxygenConductance <= 0) {
            return 0;
        }
        double airOverWater = ATMOSPHERE / (GAS * TemperatureScale.kelvin(temperature)) / solubility;
        double ratio = Math.sqrt(SchmidtNumber.ofOxygen(temperature) / SchmidtNumber.ofCarbonDioxide(temperature));
        double mostCarried = airFlow * airOverWater;
        return -mostCarried * Math.expm1(-oxygenConductance * ratio / mostCarried);
    }

    /**
     * Exchange that reaches the water beyond a chamber through which it flows once, as in a skimmer: no more than brings all
     * that passes to rest.
     *
     * <pre>G_F = F (1 - exp(-G/F))</pre>
     *
     * @param conductance G within the chamber
     * @param flow F of water through it; infinite for bubbles in the open water
     * @return volume per time
     * @source first-order exchange along a plug flow; mass balance
     * @validity a column that is not mixed along its height; a mixed one gives G F/(G + F), up to a fifth less
     */
    @Unit("m^3/s")
    public static double through(@Unit("m^3/s") double conductance, @Unit("m^3/s") double flow) {
        Bounds.notNegative(conductance, "m^3/s", "conductance");
        if (!(flow > 0)) {
            throw new IllegalArgumentException("a flow of " + flow + " m^3/s passes no chamber; it must be above 0");
        }
        return flow == Double.POSITIVE_INFINITY ? conductance : -flow * Math.expm1(-conductance / flow);
    }
}
