package org.tidewright.seawater.carbonate;

import org.tidewright.seawater.gas.CarbonDioxide;
import org.tidewright.seawater.range.Bounds;
import org.tidewright.seawater.unit.Unit;

/**
 * Water of a known temperature, salinity and composition, whose carbonate system two more quantities settle. Total
 * scale, per kilogram of seawater, one atmosphere.
 *
 * <pre>{@code
 * CarbonateState state = CarbonateSystem.at(25, 35).fromAlkalinityAndPh(2.3e-3, 8.1);
 * state.aragoniteSaturation(); // 3.72
 * }</pre>
 *
 * @param temperature of the water, ITS-90
 * @param practicalSalinity PSS-78
 * @param totals boron, calcium, nutrients
 * @param carbonicAcid whose constants for carbonic acid
 */
public record CarbonateSystem(
        @Unit("degC") double temperature,
        @Unit("1") double practicalSalinity,
        TotalConcentrations totals,
        CarbonicAcid carbonicAcid) {

    /** Refuses a temperature or salinity that cannot be meant. */
    public CarbonateSystem {
        Bounds.waterTemperature(temperature);
        Bounds.practicalSalinity(practicalSalinity);
    }

    /**
     * Natural seawater without nutrients.
     *
     * @param temperature of the water, ITS-90
     * @param practicalSalinity PSS-78
     * @source {@link BoronRatio#UPPSTROM_1974}, {@link CarbonicAcid#LUEKER_2000}, as the best-practice handbook
     *     recommends: Dickson, Sabine and Christian 2007, PICES Special Publication 3
     * @validity as {@link CarbonicAcid#LUEKER_2000}
     */
    public static CarbonateSystem at(@Unit("degC") double temperature, @Unit("1") double practicalSalinity) {
        return at(
                temperature,
                practicalSalinity,
                TotalConcentrations.ofSeawater(practicalSalinity, BoronRatio.UPPSTROM_1974));
    }

    /**
     * Water of stated boron, calcium and nutrients.
     *
     * @param temperature of the water, ITS-90
     * @param practicalSalinity PSS-78
     * @param totals boron, calcium, nutrients
     * @source {@link CarbonicAcid#LUEKER_2000}, as the handbook recommends
     * @validity as {@link CarbonicAcid#LUEKER_2000}
     */
    public static CarbonateSystem at(
            @Unit("degC") double temperature, @Unit("1") double practicalSalinity, TotalConcentrations totals) {
        return new CarbonateSystem(temperature, practicalSalinity, totals, CarbonicAcid.LUEKER_2000);
    }

    /** The state with this alkalinity and dissolved inorganic carbon. */
    public CarbonateState fromAlkalinityAndCarbon(
            @Unit("mol/kg") double alkalinity, @Unit("mol/kg") double inorganicCarbon) {
        return solve(KnownPair.ALKALINITY_CARBON, alkalinity, inorganicCarbon);
    }

    /** The state with this alkalinity and pH on the total scale. */
    public CarbonateState fromAlkalinityAndPh(@Unit("mol/kg") double alkalinity, @Unit("1") double phTotal) {
        return solve(KnownPair.ALKALINITY_PH, alkalinity, phTotal);
    }

    /** The state with this alkalinity and partial pressure of carbon dioxide. */
    public CarbonateState fromAlkalinityAndPartialPressure(
            @Unit("mol/kg") double alkalinity, @Unit("atm") double partialPressure) {
        return solve(KnownPair.ALKALINITY_FUGACITY, alkalinity, fugacity(partialPressure));
    }

    /** The state with this alkalinity and carbonate ion; of the two waters that have both, the less caustic. */
    public CarbonateState fromAlkalinityAndCarbonate(
            @Unit("mol/kg") double alkalinity, @Unit("mol/kg") double carbonate) {
        return solve(KnownPair.ALKALINITY_CARBONATE, alkalinity, carbonate);
    }

    /** The state with this dissolved inorganic carbon and pH on the total scale. */
    public CarbonateState fromCarbonAndPh(@Unit("mol/kg") double inorganicCarbon, @Unit("1") double phTotal) {
        return solve(KnownPair.CARBON_PH, inorganicCarbon, phTotal);
    }

    /** The state with this dissolved inorganic carbon and partial pressure of carbon dioxide. */
    public CarbonateState fromCarbonAndPartialPressure(
            @Unit("mol/kg") double inorganicCarbon, @Unit("atm") double partialPressure) {
        return solve(KnownPair.CARBON_FUGACITY, inorganicCarbon, fugacity(partialPressure));
    }

    /** The state with this dissolved inorganic carbon and carbonate ion. */
    public CarbonateState fromCarbonAndCarbonate(
            @Unit("mol/kg") double inorganicCarbon, @Unit("mol/kg") double carbonate) {
        return solve(KnownPair.CARBON_CARBONATE, inorganicCarbon, carbonate);
    }

    /** The state with this pH on the total scale and partial pressure of carbon dioxide. */
    public CarbonateState fromPhAndPartialPressure(@Unit("1") double phTotal, @Unit("atm") double partialPressure) {
        return solve(KnownPair.PH_FUGACITY, phTotal, fugacity(partialPressure));
    }

    /** The state with this pH on the total scale and carbonate ion. */
    public CarbonateState fromPhAndCarbonate(@Unit("1") double phTotal, @Unit("mol/kg") double carbonate) {
        return solve(KnownPair.PH_CARBONATE, phTotal, carbonate);
    }

    /** The state with this partial pressure of carbon dioxide and carbonate ion. */
    public CarbonateState fromPartialPressureAndCarbonate(
            @Unit("atm") double partialPressure, @Unit("mol/kg") double carbonate) {
        return solve(KnownPair.FUGACITY_CARBONATE, fugacity(partialPressure), carbonate);
    }

    /**
     * The same water warmed or cooled, shut off from the air: alkalinity, inorganic carbon and all totals stay, pH and
     * carbon dioxide do not.
     */
    public CarbonateState broughtTo(CarbonateState state, @Unit("degC") double newTemperature) {
        return new CarbonateSystem(newTemperature, practicalSalinity, totals, carbonicAcid)
                .fromAlkalinityAndCarbon(state.alkalinity(), state.inorganicCarbon());
    }

    /**
     * The state in which both of a pair hold.
     *
     * @param pair which two are known
     * @param first the first of them, in the unit the pair states
     * @param second the second of them
     * @throws IllegalArgumentException where no water has both
     */
    public CarbonateState solve(KnownPair pair, @Unit("*") double first, @Unit("*") double second) {
        Equilibria equilibria = new Equilibria();
        equilibria.set(temperature, practicalSalinity, carbonicAcid);
        equilibria.setTotals(
                totals.borate(), totals.calcium(), totals.phosphate(), totals.silicate(), totals.ammonia());
        CarbonateState state = new CarbonateState(equilibria);
        pair.solve(equilibria, first, second, state);
        return state;
    }

    private double fugacity(double partialPressure) {
        return partialPressure * CarbonDioxide.fugacityFactor(temperature);
    }
}
