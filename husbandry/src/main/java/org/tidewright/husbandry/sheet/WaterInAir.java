package org.tidewright.husbandry.sheet;

import java.util.EnumMap;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.tidewright.husbandry.ph.AiredWater;
import org.tidewright.husbandry.ph.OutdoorAir;
import org.tidewright.seawater.carbonate.Alkalinity;
import org.tidewright.seawater.carbonate.BoronRatio;

/**
 * The pH a probe would read in a water at rest with some air, for any alkalinity; temperature, salinity, nutrients and
 * boron stay.
 *
 * @param water what is known of it, in the units of the sheet
 */
public record WaterInAir(Map<SheetColumn, Double> water, BoronRatio boron, double temperature, double salinity) {
    /** Outdoors, ppm of dry air. */
    public static final double FRESH = 1e6 * OutdoorAir.SHARE;

    /** Null where temperature or salinity is not known. */
    public static @Nullable WaterInAir of(Map<SheetColumn, Double> given, BoronRatio boron) {
        Double temperature = given.get(SheetColumn.TEMPERATURE);
        Double salinity = given.get(SheetColumn.PRACTICAL_SALINITY);
        if (temperature == null || salinity == null) {
            return null;
        }
        Map<SheetColumn, Double> water = new EnumMap<>(given);
        WaterSheet.SETTLING.forEach(water::remove);
        return new WaterInAir(water, boron, temperature, salinity);
    }

    /** pH on the NBS scale at an alkalinity in dKH, in air of so many ppm of carbon dioxide. */
    public double ph(double degrees, double ppm) {
        AiredWater aired = new AiredWater(temperature, salinity, WaterSheet.totals(salinity, water, boron, null));
        return aired.phAtRest(Alkalinity.fromGermanDegrees(degrees), ppm * 1e-6);
    }
}
