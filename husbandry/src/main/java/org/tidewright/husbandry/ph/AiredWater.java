package org.tidewright.husbandry.ph;

import org.tidewright.seawater.carbonate.Alkalinity;
import org.tidewright.seawater.carbonate.BoronRatio;
import org.tidewright.seawater.carbonate.CarbonateState;
import org.tidewright.seawater.carbonate.CarbonateSystem;
import org.tidewright.seawater.carbonate.PhScale;
import org.tidewright.seawater.carbonate.TotalConcentrations;
import org.tidewright.seawater.density.Density;
import org.tidewright.seawater.gas.CarbonDioxide;
import org.tidewright.seawater.heat.MoistAir;
import org.tidewright.seawater.unit.Unit;

/**
 * A tank's water between its alkalinity, its carbon dioxide and what a meter shows, at one standard atmosphere: one way from
 * any two of them to the third.
 *
 * @param temperature of the water, ITS-90
 * @param salinity PSS-78
 * @param totals boron and nutrients
 */
public record AiredWater(
        @Unit("degC") double temperature, @Unit("1") double salinity, TotalConcentrations totals) {
    /** With the boron that goes with its salt, and no nutrients. */
    public static AiredWater of(@Unit("degC") double temperature, @Unit("1") double salinity) {
        return new AiredWater(
                temperature, salinity, TotalConcentrations.ofSeawater(salinity, BoronRatio.UPPSTROM_1974));
    }

    private CarbonateSystem system() {
        return CarbonateSystem.at(temperature, salinity, totals);
    }

    private double perMass(double alkalinity) {
        return Alkalinity.perMass(alkalinity, temperature, salinity);
    }

    /** The water of an alkalinity and a pH on the NBS scale. */
    public CarbonateState reading(@Unit("mol/m^3") double alkalinity, @Unit("1") double ph) {
        double total = PhScale.NBS.convert(ph, PhScale.TOTAL, temperature, salinity);
        return system().fromAlkalinityAndPh(perMass(alkalinity), total);
    }

    /** The water of an alkalinity under a partial pressure of carbon dioxide. */
    public CarbonateState under(@Unit("mol/m^3") double alkalinity, @Unit("atm") double pressure) {
        return system().fromAlkalinityAndPartialPressure(perMass(alkalinity), pressure);
    }

    /** The water after so much inorganic carbon was added, its alkalinity as it was. */
    public CarbonateState withCarbon(CarbonateState water, @Unit("mol/kg") double added) {
        return system().fromAlkalinityAndCarbon(water.alkalinity(), water.inorganicCarbon() + added);
    }

    /** pH on the NBS scale at rest with air in which carbon dioxide makes a share of the dry moles. */
    public @Unit("1") double phAtRest(@Unit("mol/m^3") double alkalinity, @Unit("1") double share) {
        return meter(under(alkalinity, pressure(share)));
    }

    /** What an electrode set with NBS buffers reads in it. */
    public static @Unit("1") double meter(CarbonateState water) {
        return water.ph(PhScale.NBS);
    }

    /** Partial pressure over the water of a share of the dry air: the air there is moist. */
    public @Unit("atm") double pressure(@Unit("1") double share) {
        return CarbonDioxide.partialPressure(share, temperature, salinity, MoistAir.STANDARD_PRESSURE);
    }

    /** Share of the dry air that a partial pressure stands for. */
    public @Unit("1") double share(@Unit("atm") double pressure) {
        return CarbonDioxide.shareOfDryAir(pressure, temperature, salinity, MoistAir.STANDARD_PRESSURE);
    }

    /** Carbon dioxide that dissolves in a cubic metre for each atmosphere of its partial pressure. */
    @Unit("mol/(m^3*atm)")
    double solubility() {
        return Density.ofSeawater(temperature, salinity)
                * CarbonDioxide.solubility(temperature, salinity)
                * CarbonDioxide.fugacityFactor(temperature);
    }
}
