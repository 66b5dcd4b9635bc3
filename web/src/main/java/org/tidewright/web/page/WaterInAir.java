package org.tidewright.web.page;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.tidewright.husbandry.sheet.SheetColumn;
import org.tidewright.husbandry.sheet.WaterSheet;
import org.tidewright.seawater.carbonate.Alkalinity;
import org.tidewright.seawater.carbonate.BoronRatio;
import org.tidewright.seawater.gas.CarbonDioxide;
import org.tidewright.seawater.heat.MoistAir;
import org.tidewright.web.chart.AirCurves;

/**
 * The pH a probe would read in a water at rest with some air, for any alkalinity; temperature, salinity, nutrients and
 * boron stay.
 *
 * @param water what is known of it, in the units of the sheet
 */
record WaterInAir(Map<SheetColumn, Double> water, BoronRatio boron, double temperature, double salinity) {
    /** Outdoors in the early 2020s, ppm of dry air. */
    static final double FRESH = 420;

    private static final double[] AIRS = {280, FRESH, 600, 1000, 1500, 2500};
    private static final double PER_DEGREE = 2;

    /** Null where temperature or salinity is not known. */
    static @Nullable WaterInAir of(Map<SheetColumn, Double> given, BoronRatio boron) {
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
    double ph(double degrees, double ppm) {
        double alkalinity = Alkalinity.perMass(Alkalinity.fromGermanDegrees(degrees), temperature, salinity);
        double pressure = CarbonDioxide.partialPressure(ppm * 1e-6, temperature, salinity, MoistAir.STANDARD_PRESSURE);
        Map<SheetColumn, Double> given = new EnumMap<>(water);
        given.put(SheetColumn.TOTAL_ALKALINITY, alkalinity * 1e6);
        given.put(SheetColumn.PARTIAL_PRESSURE, pressure * 1e6);
        return WaterSheet.of(given, boron, null).computed().getOrDefault(SheetColumn.PH_NBS, Double.NaN);
    }

    /** The curves over the alkalinities of tanks, wide enough for the keeper's own. */
    AirCurves curves(@Nullable OwnWater own) {
        double from = 4;
        double to = 14;
        AirCurves.Mark mark = null;
        if (own != null && own.isOrdinary()) {
            from = Math.min(from, Math.floor(own.alkalinity()));
            to = Math.max(to, Math.ceil(own.alkalinity()));
            mark = new AirCurves.Mark(own.alkalinity(), own.ph(), own.freshPh());
        }
        int steps = (int) Math.round((to - from) * PER_DEGREE);
        double[] alkalinity = new double[steps + 1];
        for (int i = 0; i <= steps; i++) {
            alkalinity[i] = from + i / PER_DEGREE;
        }
        List<AirCurves.Air> airs = new ArrayList<>();
        for (double ppm : AIRS) {
            double[] ph = new double[alkalinity.length];
            for (int i = 0; i < ph.length; i++) {
                ph[i] = ph(alkalinity[i], ppm);
            }
            airs.add(new AirCurves.Air(ppm, ppm == FRESH, ph));
        }
        return new AirCurves(alkalinity, airs, mark);
    }
}
