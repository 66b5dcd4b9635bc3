package org.tidewright.twin.law.hydraulic;

import org.tidewright.seawater.range.Bounds;
import org.tidewright.seawater.unit.Unit;

/**
 * A surge vessel emptied into the display faster than the overflow can drain.
 *
 * @param displayRise of the display's level
 * @param lastSectionFall of the sump section the water was taken from beforehand
 * @source continuity
 * @checkvalue 20 L, 0.675 m^2, 0.1116 m^2: 29.63 mm and 179.2 mm
 */
public record Surge(
        @Unit("m") double displayRise, @Unit("m") double lastSectionFall) {
    /**
     * What a vessel of a volume does.
     *
     * @param volume emptied
     * @param displaySurface free surface of the display
     * @param lastSectionSurface free surface of the sump's last section
     */
    public static Surge of(
            @Unit("m^3") double volume, @Unit("m^2") double displaySurface, @Unit("m^2") double lastSectionSurface) {
        Bounds.notNegative(volume, "m^3", "volume of the surge");
        return new Surge(
                volume / Bounds.positive(displaySurface, "m^2", "free surface of the display"),
                volume / Bounds.positive(lastSectionSurface, "m^2", "free surface of the last section"));
    }

    /** Flow the overflow must carry at the height of the surge. */
    @Unit("m^3/s")
    public double peakOverflow(Weir weir, @Unit("m") double runningHead) {
        return weir.flow(runningHead + displayRise);
    }
}
