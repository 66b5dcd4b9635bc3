package org.tidewright.seawater.gas;

import org.tidewright.seawater.heat.MoistAir;
import org.tidewright.seawater.heat.VapourPressure;
import org.tidewright.seawater.range.Bounds;
import org.tidewright.seawater.unit.Unit;

/**
 * Partial pressure of oxygen in a gas and in water in equilibrium with it: what to reckon with under a lid, in a
 * skimmer fed with gas, or at altitude.
 *
 * <p>The humidity of the room changes nothing at an open surface. The film of air on the water is saturated with vapour
 * at the water's temperature whatever the room is like, and the vapour rising through it holds the oxygen back by just
 * so much: {@link #atWater}. Humidity counts where a gas is measured or supplied as it is: {@link #inAir}.
 */
public final class OxygenPressure {
    /**
     * Moles of oxygen per mole of dry air.
     *
     * @source Machta and Hughes 1970, Science 168, 1582-1584 (doi 10.1126/science.168.3939.1582): 0.20946; the value in
     *     Benson and Krause 1984
     */
    @Unit("1")
    public static final double SHARE_OF_DRY_AIR = 0.20946;

    private static final double HIGHEST = 200_000; // Pa

    private OxygenPressure() {}

    /**
     * Partial pressure of oxygen in air of a known humidity.
     *
     * <pre>p_O2 = 0.20946 [p - RH p_sat(t)]</pre>
     *
     * @param temperature of the air, ITS-90
     * @param relativeHumidity over liquid water, as a share: 0 dry, 1 saturated
     * @param pressure total pressure of the air, not reduced to sea level
     * @return partial pressure of oxygen
     * @source Dalton's law, ideal gases; {@link #SHARE_OF_DRY_AIR}
     * @validity near room conditions, 0.1 %; fresh air: each 1000 ppm of carbon dioxide breathed out cost 0.5 % of
     *     the oxygen
     */
    @Unit("Pa")
    public static double inAir(
            @Unit("degC") double temperature, @Unit("1") double relativeHumidity, @Unit("Pa") double pressure) {
        return ofMoistAir(MoistAir.vapourPressure(temperature, relativeHumidity), pressure);
    }

    /**
     * Partial pressure of oxygen in the film of air on seawater, which is saturated with vapour: that of water in
     * equilibrium with the air above it.
     *
     * <pre>p_O2 = 0.20946 (p - p_w)</pre>
     *
     * with p_w the vapour pressure over the seawater.
     *
     * @param temperature of the water, ITS-90
     * @param practicalSalinity PSS-78
     * @param pressure total pressure of the air at the water, not reduced to sea level
     * @return partial pressure of oxygen
     * @source Benson and Krause 1984, Limnol. Oceanogr. 29, 620-632 (doi 10.4319/lo.1984.29.3.0620);
     *     {@link #SHARE_OF_DRY_AIR}
     * @validity as {@link VapourPressure#ofSeawater}, 50 to 110 kPa
     */
    @Unit("Pa")
    public static double atWater(
            @Unit("degC") double temperature, @Unit("1") double practicalSalinity, @Unit("Pa") double pressure) {
        return ofMoistAir(VapourPressure.ofSeawater(temperature, practicalSalinity), pressure);
    }

    /**
     * Oxygen that seawater holds in equilibrium with any gas, from the partial pressure of oxygen in that gas: Henry's
     * law, with the constant that solubility under air implies.
     *
     * <pre>c = c*(1 atm) p_O2 / [0.20946 (101325 Pa - p_w)]</pre>
     *
     * @param oxygenPressure partial pressure of oxygen in the gas at the water, moist as it is there
     * @param temperature in-situ temperature of the water, ITS-90
     * @param practicalSalinity PSS-78
     * @return moles of O2 per cubic metre of seawater
     * @source Henry's law with {@link OxygenSolubility#perVolume(double, double)}, as Benson and Krause 1984
     * @validity as {@link OxygenSolubility#perMass}; the gas's departure from the ideal, left out, is 0.1 % under pure
     *     oxygen
     */
    @Unit("mol/m^3")
    public static double equilibrium(
            @Unit("Pa") double oxygenPressure, @Unit("degC") double temperature, @Unit("1") double practicalSalinity) {
        Bounds.within(oxygenPressure, "Pa", 0, HIGHEST, "partial pressure of oxygen");
        return OxygenSolubility.perVolume(temperature, practicalSalinity)
                * oxygenPressure
                / atWater(temperature, practicalSalinity, MoistAir.STANDARD_PRESSURE);
    }

    /**
     * Partial pressure of the oxygen dissolved in seawater, its tension: what an oxygen electrode feels. The inverse of
     * {@link #equilibrium}.
     *
     * @param concentration moles of O2 per cubic metre of seawater
     * @param temperature in-situ temperature of the water, ITS-90
     * @param practicalSalinity PSS-78
     * @return partial pressure of oxygen in a gas in equilibrium with the water
     * @source as {@link #equilibrium}
     * @validity as {@link #equilibrium}
     */
    @Unit("Pa")
    public static double inWater(
            @Unit("mol/m^3") double concentration,
            @Unit("degC") double temperature,
            @Unit("1") double practicalSalinity) {
        Bounds.within(concentration, "mol/m^3", 0, 10, "oxygen", "is it in mg/L or umol/kg?");
        return concentration
                / OxygenSolubility.perVolume(temperature, practicalSalinity)
                * atWater(temperature, practicalSalinity, MoistAir.STANDARD_PRESSURE);
    }

    private static double ofMoistAir(double vapour, double pressure) {
        Bounds.within(pressure, "Pa", 20_000, HIGHEST, "air pressure");
        return SHARE_OF_DRY_AIR * (pressure - vapour);
    }
}
