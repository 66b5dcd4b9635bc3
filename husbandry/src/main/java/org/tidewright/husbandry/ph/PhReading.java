package org.tidewright.husbandry.ph;

import org.tidewright.seawater.range.Bounds;
import org.tidewright.seawater.unit.Unit;

/**
 * What was measured, each with one standard error.
 *
 * @param salinity practical
 * @param ph on the NBS scale, as an electrode set with the trade's buffers shows it
 */
public record PhReading(
        @Unit("mol/m^3") double alkalinity,
        @Unit("mol/m^3") double alkalinityError,
        @Unit("1") double salinity,
        @Unit("1") double salinityError,
        @Unit("degC") double temperature,
        @Unit("K") double temperatureError,
        @Unit("1") double ph,
        @Unit("1") double phError) {
    /** Refuses what cannot be meant. */
    public PhReading {
        Bounds.within(alkalinity, "mol/m^3", 0.1, 20, "alkalinity", "is it in dKH or mg/L?");
        Bounds.within(alkalinityError, "mol/m^3", 0, 10, "error of the alkalinity", "is it in dKH?");
        Bounds.within(salinity, "1", 2, 60, "salinity", "is it a specific gravity?");
        Bounds.within(salinityError, "1", 0, 10, "error of the salinity");
        Bounds.waterTemperature(temperature);
        Bounds.within(temperatureError, "K", 0, 10, "error of the temperature");
        Bounds.within(ph, "1", 6, 10, "pH");
        Bounds.within(phError, "1", 0, 1, "error of the pH");
    }

    AiredWater water() {
        return AiredWater.of(temperature, salinity);
    }

    /** The carbon dioxide it stands for. */
    public WaterCarbonDioxide carbonDioxide() {
        return WaterCarbonDioxide.of(this);
    }
}
