package org.tidewright.twin.law.hydraulic;

import org.tidewright.seawater.range.Bounds;
import org.tidewright.seawater.unit.Unit;

/** A weir whose lower water stands above the crest and holds the flow back. */
public final class DrownedWeir {
    private static final double EXPONENT = 0.385;

    private DrownedWeir() {}

    /**
     * Share of the free flow that a drowned rectangular weir still passes.
     *
     * <pre>Q / Q1 = (1 - (h2/h1)^1.5)^0.385</pre>
     *
     * @param upperHead h1, upper level over the crest
     * @param lowerHead h2, lower level over the crest; at or below it the weir is free
     * @return 1 for a free weir, 0 when the lower water stands as high as the upper
     * @source Villemonte 1947, Submerged weir discharge studies, Engineering News-Record 866, 54-57 (as cited by others);
     *     the inner exponent is that of the free law, 1.5 for a rectangular crest
     * @validity sharp crests; about 5 % in the source's experiments (from memory)
     * @checkvalue h2/h1 = 0.5: (1 - 0.353553)^0.385 = 0.845386 (hand-worked)
     */
    @Unit("1")
    public static double submergenceFactor(@Unit("m") double upperHead, @Unit("m") double lowerHead) {
        Bounds.finite(upperHead, "m", "upper head");
        Bounds.finite(lowerHead, "m", "lower head");
        if (lowerHead <= 0) {
            return 1;
        }
        if (lowerHead >= upperHead) {
            return 0;
        }
        double ratio = lowerHead / upperHead;
        return Math.pow(1 - ratio * Math.sqrt(ratio), EXPONENT);
    }

    /**
     * Flow over a weir from the higher side to the lower one, positive in the direction upper to lower.
     *
     * @param weir the crest's free law
     * @param upperHead level over the crest on the side called upper
     * @param lowerHead level over the crest on the side called lower; higher than the upper one makes the flow negative
     * @source the crest's law times {@link #submergenceFactor}
     */
    @Unit("m^3/s")
    public static double flow(Weir weir, @Unit("m") double upperHead, @Unit("m") double lowerHead) {
        if (lowerHead > upperHead) {
            return -flow(weir, lowerHead, upperHead);
        }
        return weir.flow(upperHead) * submergenceFactor(upperHead, lowerHead);
    }
}
