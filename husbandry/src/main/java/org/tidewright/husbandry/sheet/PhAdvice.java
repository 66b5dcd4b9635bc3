package org.tidewright.husbandry.sheet;

import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.tidewright.husbandry.advice.FigureText;
import org.tidewright.husbandry.ph.Side;

/**
 * What to do about a water's pH and why, once two of the four are known. The pH is a sign of carbon dioxide and alkalinity:
 * which of them is to be moved, the air tells.
 *
 * @param alkalinity dKH
 * @param ph on the NBS scale
 * @param ppm carbon dioxide of the dry air it would be at rest with
 * @param freshPh pH of the same water in fresh air
 * @param phWithMore pH with 1 dKH more and the air as it is
 */
public record PhAdvice(double alkalinity, double ph, double ppm, double freshPh, double phWithMore) {
    /** What a well-kept probe may be off by. */
    public static final double PROBE_ERROR = 0.05;

    /** Below it hardly any tank stands; the readings are the likelier cause. */
    private static final double LEAST_PPM = 100;

    /** The advice for a solved water; null where too little is known of it. */
    public static @Nullable PhAdvice of(Map<SheetColumn, Double> sheet, WaterInAir air) {
        Double alkalinity = sheet.get(SheetColumn.ALKALINITY_DKH);
        Double ph = sheet.get(SheetColumn.PH_NBS);
        Double ppm = sheet.get(SheetColumn.SHARE_OF_DRY_AIR);
        if (alkalinity == null || ph == null || ppm == null) {
            return null;
        }
        return new PhAdvice(
                alkalinity, ph, ppm, air.ph(alkalinity, WaterInAir.FRESH), air.ph(alkalinity + 1, Math.min(ppm, 1e6)));
    }

    /** Whether it is near enough to a tank's water to stand in the picture. */
    public boolean isOrdinary() {
        return alkalinity >= 1 && alkalinity <= 30 && ph >= 6.5 && ph <= 9.5;
    }

    /** What to do about its pH, and why. */
    public String advice() {
        Side side = Side.of(freshPh - ph, PROBE_ERROR);
        String at = "At " + degrees(alkalinity) + " your water ";
        String fresh = "in fresh air of " + ppm(WaterInAir.FRESH);
        if (ppm < LEAST_PPM) {
            return "Measure again before you act. " + at + "would hold only the CO₂ of air with " + ppm(ppm)
                    + ", which hardly any tank does; " + fresh + " it would read " + ph(freshPh) + ".";
        } else if (side == Side.MORE) {
            return "Do not dose to raise this pH: give the water fresh air. " + at
                    + "holds as much CO₂ as air with " + ppm(ppm) + " would give it; " + fresh
                    + " it would read " + ph(freshPh) + ". One dKH more in the air as it is would make it "
                    + ph(phWithMore) + ".";
        } else if (side == Side.LESS) {
            return "Add nothing to bring this pH down: air will. " + at + "holds only the CO₂ of air with "
                    + ppm(ppm) + ", as it does while algae and corals in the light, or lime water, take it up faster"
                    + " than the air brings it; " + fresh + " it would read " + ph(freshPh) + ".";
        }
        return "Leave the pH alone: it is what fresh air gives. " + at + "stands at " + ppm(ppm) + " of CO₂; " + fresh
                + " it would read " + ph(freshPh) + ", and a probe cannot tell the two apart.";
    }

    static String degrees(double alkalinity) {
        return FigureText.number(alkalinity, 1) + "\u00a0dKH";
    }

    static String ppm(double ppm) {
        return SheetText.ppm(ppm) + "\u00a0ppm";
    }

    static String ph(double ph) {
        return FigureText.number(ph, 2);
    }
}
