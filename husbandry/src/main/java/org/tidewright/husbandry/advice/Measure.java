package org.tidewright.husbandry.advice;

import org.tidewright.plan.model.UnitSystem;

/** A kind of quantity and how it is told: in which unit, and how finely at the finest. */
public enum Measure {
    /** m³, told in litres or US gallons. */
    VOLUME(new Unit("L", "l", 1000, 0, 1), new Unit("gal", "gal", 1 / 3.785411784e-3, 0, 1)),
    /** m, a water level or a small height, told in millimetres or inches. */
    LEVEL(new Unit("mm", "mm", 1000, 0, 0), new Unit("in", "in", 1 / 0.0254, 0, 1)),
    /** m of glass or its bow, told in millimetres or hundredths of an inch. */
    THICKNESS(new Unit("mm", "mm", 1000, 0, 1), new Unit("in", "in", 1 / 0.0254, 0, 2)),
    /** m, told in centimetres or inches. */
    LENGTH(new Unit("cm", "cm", 100, 0, 1), new Unit("in", "in", 1 / 0.0254, 0, 1)),
    /** °C on ITS-90. */
    TEMPERATURE(new Unit("°C", "c", 1, 0, 1), new Unit("°F", "f", 1.8, 32, 1)),
    /** K, a difference of temperatures. */
    TEMPERATURE_DIFFERENCE(new Unit("K", "k", 1, 0, 1), new Unit("°F", "f", 1.8, 0, 1)),
    /** kg/m³ of a dissolved gas, told in mg/L everywhere. */
    CONCENTRATION(new Unit("mg/L", "mg_per_l", 1000, 0, 1), new Unit("mg/L", "mg_per_l", 1000, 0, 1)),
    /** kg/m³ of what is dissolved in traces, told in mg/L everywhere. */
    TRACE(new Unit("mg/L", "mg_per_l", 1000, 0, 3), new Unit("mg/L", "mg_per_l", 1000, 0, 3)),
    /** kg/s of an element that comes or goes, told in g a day everywhere. */
    TURNOVER(new Unit("g/d", "g_per_d", 8.64e7, 0, 4), new Unit("g/d", "g_per_d", 8.64e7, 0, 4)),
    /** s, told in seconds, minutes, hours or days by its size. */
    DURATION(new Unit("s", "s", 1, 0, 0), new Unit("s", "s", 1, 0, 0)),
    /** m² of algae, told in square centimetres or inches. */
    AREA(new Unit("cm²", "cm2", 1e4, 0, 0), new Unit("in²", "in2", 1 / 6.4516e-4, 0, 1)),
    /** kg of a medium or of food, told in grams or ounces. */
    SMALL_MASS(new Unit("g", "g", 1000, 0, 1), new Unit("oz", "oz", 1 / 0.028349523125, 0, 2)),
    /** kg. */
    MASS(new Unit("kg", "kg", 1, 0, 1), new Unit("lb", "lb", 1 / 0.45359237, 0, 0)),
    /** Pa, a load on a floor, told in kPa or pounds per square foot. */
    LOAD(new Unit("kPa", "kpa", 1e-3, 0, 1), new Unit("psf", "psf", 1 / 47.880259, 0, 0)),
    /** N, a load on a foot, told as the mass that weighs so. */
    FORCE(new Unit("kg", "kg", 1 / 9.80665, 0, 0), new Unit("lb", "lb", 1 / 4.4482216152605, 0, 0)),
    /** m³/s. */
    FLOW(new Unit("L/h", "l_per_h", 3.6e6, 0, 0), new Unit("gal/h", "gal_per_h", 3600 / 3.785411784e-3, 0, 0)),
    /** W. */
    POWER(new Unit("W", "w", 1, 0, 0), new Unit("W", "w", 1, 0, 0)),
    /** J, told in watt-hours. */
    ENERGY(new Unit("Wh", "wh", 1 / 3600.0, 0, 0), new Unit("Wh", "wh", 1 / 3600.0, 0, 0)),
    /** A share of one, told in per cent. */
    SHARE(new Unit("%", "percent", 100, 0, 0), new Unit("%", "percent", 100, 0, 0)),
    /** W/K. */
    CONDUCTANCE(new Unit("W/K", "w_per_k", 1, 0, 0), new Unit("W/K", "w_per_k", 1, 0, 0)),
    /** m/s of a gas through a surface, told in cm/h everywhere. */
    TRANSFER_VELOCITY(new Unit("cm/h", "cm_per_h", 360_000, 0, 1), new Unit("cm/h", "cm_per_h", 360_000, 0, 1)),
    /** A share per metre of depth. */
    SHARE_PER_LENGTH(
            new Unit("% per metre", "percent_per_m", 100, 0, 0), new Unit("% per foot", "percent_per_ft", 30.48, 0, 1)),
    /** 1/s, how fast something goes on, told per day everywhere. */
    PACE(new Unit("/d", "per_d", 86_400, 0, 2), new Unit("/d", "per_d", 86_400, 0, 2)),
    /** mol/s that is breathed, made or used, told in mmol/h everywhere. */
    METABOLISM(new Unit("mmol/h", "mmol_per_h", 3.6e6, 0, 1), new Unit("mmol/h", "mmol_per_h", 3.6e6, 0, 1)),
    /** mol/m³ of what is dissolved, told in µmol/L everywhere. */
    MOLARITY(new Unit("µmol/L", "umol_per_l", 1000, 0, 1), new Unit("µmol/L", "umol_per_l", 1000, 0, 1)),
    /** mol/kg that a medium holds, told in mmol/kg everywhere. */
    HOLDING(new Unit("mmol/kg", "mmol_per_kg", 1000, 0, 1), new Unit("mmol/kg", "mmol_per_kg", 1000, 0, 1)),
    /** m³/(kg s) of water for each mass of a medium, told in L/h and kilogram everywhere. */
    CLEARANCE(new Unit("L/(h·kg)", "l_per_h_kg", 3.6e6, 0, 1), new Unit("L/(h·kg)", "l_per_h_kg", 3.6e6, 0, 1)),
    /** mol/(m² s) of photons, told in µmol/m²/s everywhere. */
    LIGHT(new Unit("µmol/m²/s", "umol_per_m2_s", 1e6, 0, 0), new Unit("µmol/m²/s", "umol_per_m2_s", 1e6, 0, 0)),
    /** m/s of water, told in cm/s everywhere. */
    SPEED(new Unit("cm/s", "cm_per_s", 100, 0, 0), new Unit("cm/s", "cm_per_s", 100, 0, 0)),
    /** mol/m³ of alkalinity, told in dKH everywhere: 10 mg/L of CaO, 56.0774 g/mol, are one. */
    ALKALINITY(new Unit("dKH", "dkh", 56.0774 / 20, 0, 2), new Unit("dKH", "dkh", 56.0774 / 20, 0, 2)),
    /** Practical salinity. */
    SALINITY(new Unit("", "pss", 1, 0, 2), new Unit("", "pss", 1, 0, 2)),
    /** pH as an electrode set with NBS buffers reads it, or a difference of two. */
    PH(new Unit("", "ph_nbs", 1, 0, 2), new Unit("", "ph_nbs", 1, 0, 2)),
    /** atm of carbon dioxide, told in µatm everywhere. */
    PARTIAL_PRESSURE(new Unit("µatm", "uatm", 1e6, 0, 0), new Unit("µatm", "uatm", 1e6, 0, 0)),
    /** A gas's share of the moles of dry air, told in ppm everywhere. */
    SHARE_OF_AIR(new Unit("ppm", "ppm", 1e6, 0, 0), new Unit("ppm", "ppm", 1e6, 0, 0)),
    /** mol/m³ of alkalinity that a dose brings, told in dKH everywhere: 10 mg/L of CaO, 56.0774 g/mol, are one. */
    ALKALINITY_RISE(new Unit("dKH", "dkh", 56.0774 / 20, 0, 5), new Unit("dKH", "dkh", 56.0774 / 20, 0, 5)),
    /** kg/m³ of an element that a dose brings, told in mg/L everywhere. */
    ELEMENT_RISE(new Unit("mg/L", "mg_per_l", 1000, 0, 4), new Unit("mg/L", "mg_per_l", 1000, 0, 4)),
    /** mol/m³ of charge in a solution to dose, told in meq/mL everywhere. */
    ALKALINE_STRENGTH(new Unit("meq/mL", "meq_per_ml", 1e-3, 0, 3), new Unit("meq/mL", "meq_per_ml", 1e-3, 0, 3)),
    /** kg/m³ of an element in a solution to dose, told in mg/mL everywhere. */
    ELEMENT_STRENGTH(new Unit("mg/mL", "mg_per_ml", 1, 0, 2), new Unit("mg/mL", "mg_per_ml", 1, 0, 2)),
    /** kg/m³ of a salt in a solution, told in g/L everywhere. */
    SALT_STRENGTH(new Unit("g/L", "g_per_l", 1, 0, 1), new Unit("g/L", "g_per_l", 1, 0, 1)),
    /** m³ that is dosed, told in millilitres everywhere. */
    DOSE(new Unit("mL", "ml", 1e6, 0, 1), new Unit("mL", "ml", 1e6, 0, 1)),
    /** mol/(m³ d) of alkalinity, told in dKH a day everywhere. */
    ALKALINITY_A_DAY(
            new Unit("dKH/d", "dkh_per_d", 56.0774 / 20, 0, 3), new Unit("dKH/d", "dkh_per_d", 56.0774 / 20, 0, 3)),
    /** kg/(m³ d), told in mg/L a day everywhere. */
    CONCENTRATION_A_DAY(new Unit("mg/L/d", "mg_per_l_d", 1000, 0, 4), new Unit("mg/L/d", "mg_per_l_d", 1000, 0, 4)),
    /** m³/d that is dosed, told in mL a day everywhere. */
    DOSE_A_DAY(new Unit("mL/d", "ml_per_d", 1e6, 0, 1), new Unit("mL/d", "ml_per_d", 1e6, 0, 1)),
    /** m³/d that is dosed in litres, told in litres or gallons a day. */
    LARGE_DOSE_A_DAY(new Unit("L/d", "l_per_d", 1000, 0, 2), new Unit("gal/d", "gal_per_d", 1 / 3.785411784e-3, 0, 2)),
    /** m³/d that drips out of a reactor, told in mL a minute everywhere, as keepers set it. */
    DRIP(new Unit("mL/min", "ml_per_min", 1e6 / 1440, 0, 1), new Unit("mL/min", "ml_per_min", 1e6 / 1440, 0, 1)),
    /** A factor on a computed value. */
    FACTOR(new Unit("", "", 1, 0, 2), new Unit("", "", 1, 0, 2)),
    /** A plain number. */
    NUMBER(new Unit("", "", 1, 0, 1), new Unit("", "", 1, 0, 1));

    /**
     * A unit shown to the keeper: shown = value × factor + zero.
     *
     * @param symbol on screens
     * @param suffix at the end of names in JSON and CSV
     * @param decimals most decimals that make sense to a reader
     */
    public record Unit(String symbol, String suffix, double factor, double zero, int decimals) {
        public double shown(double value) {
            return value * factor + zero;
        }
    }

    private final Unit metric;
    private final Unit us;

    Measure(Unit metric, Unit us) {
        this.metric = metric;
        this.us = us;
    }

    public Unit unit(UnitSystem system) {
        return system == UnitSystem.US ? us : metric;
    }
}
