package org.tidewright.seawater.carbonate;

import org.tidewright.seawater.unit.Unit;

/**
 * Six buffer factors: how much inorganic carbon or alkalinity, per kilogram of seawater, changes something by a factor
 * of e. The larger in size, the better buffered; the sign says which way it goes. Egleston, Sabine and Morel 2010,
 * Global Biogeochem. Cycles 24, GB1002, doi 10.1029/2008GB003407; here computed with every acid of the alkalinity.
 *
 * @param carbonDioxideByCarbon (d ln CO2 / d DIC)^-1 at constant alkalinity; inorganic carbon over the Revelle factor
 * @param carbonDioxideByAlkalinity (d ln CO2 / d TA)^-1 at constant inorganic carbon
 * @param hydrogenByCarbon (d ln H+ / d DIC)^-1 at constant alkalinity
 * @param hydrogenByAlkalinity (d ln H+ / d TA)^-1 at constant inorganic carbon
 * @param saturationByCarbon (d ln omega / d DIC)^-1 at constant alkalinity
 * @param saturationByAlkalinity (d ln omega / d TA)^-1 at constant inorganic carbon
 */
public record BufferFactors(
        @Unit("mol/kg") double carbonDioxideByCarbon,
        @Unit("mol/kg") double carbonDioxideByAlkalinity,
        @Unit("mol/kg") double hydrogenByCarbon,
        @Unit("mol/kg") double hydrogenByAlkalinity,
        @Unit("mol/kg") double saturationByCarbon,
        @Unit("mol/kg") double saturationByAlkalinity) {}
