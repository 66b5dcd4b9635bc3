package org.tidewright.seawater.carbonate;

import org.tidewright.seawater.range.Bounds;
import org.tidewright.seawater.unit.TemperatureScale;

/**
 * Temperature and salinity with the powers and logarithms that the fits of dissociation constants are made of, taken
 * once for all of them. Refilled for each point of a batch, hence not final; it never leaves the package.
 */
final class Conditions {
    double t; // degC, ITS-90
    double kelvin;
    double perKelvin;
    double lnKelvin;
    double s; // practical salinity
    double rootS;

    /** Ionic strength of seawater, mol/kg of water: 19.924 S / (1000 - 1.005 S), Dickson, Sabine & Christian 2007. */
    double ionic;

    double rootIonic;

    /** From per kilogram of water to per kilogram of seawater: 1 - 0.001005 S, the same handbook. */
    double waterShare;

    static Conditions at(double temperature, double practicalSalinity) {
        Conditions conditions = new Conditions();
        conditions.set(temperature, practicalSalinity);
        return conditions;
    }

    void set(double temperature, double practicalSalinity) {
        Bounds.waterTemperature(temperature);
        Bounds.practicalSalinity(practicalSalinity);
        t = temperature;
        kelvin = TemperatureScale.kelvin(temperature);
        perKelvin = 1 / kelvin;
        lnKelvin = Math.log(kelvin);
        s = practicalSalinity;
        rootS = Math.sqrt(s);
        ionic = 19.924 * s / (1000 - 1.005 * s);
        rootIonic = Math.sqrt(ionic);
        waterShare = 1 - 0.001005 * s;
    }
}
