package org.tidewright.web.drawing;

import org.jspecify.annotations.Nullable;
import org.tidewright.husbandry.reef.Colony;
import org.tidewright.husbandry.reef.Growth;
import org.tidewright.husbandry.reef.ReefSite;
import org.tidewright.plan.model.UnitSystem;

/**
 * The display with its corals to scale, from the front or from above. A colony is a disc, today's drawn through and that in
 * some years dashed; light is told by lines of the same light through one plane.
 *
 * @param svg the drawing
 * @param classes of the element around it
 */
public record ReefDrawing(String svg, String classes) {
    /**
     * From the front, with the light through the middle from front to back.
     *
     * @param tried a coral at a place that is tried; null for none
     */
    public static ReefDrawing front(
            ReefSite site, Growth growth, @Nullable Colony tried, UnitSystem units, String label) {
        return new ReefSheet(site, growth, tried, units, ReefSheet.Side.FRONT, site.width() / 2).drawn(label);
    }

    /**
     * From above, the front pane below.
     *
     * @param tried as above
     * @param height at which light is told
     */
    public static ReefDrawing above(
            ReefSite site, Growth growth, @Nullable Colony tried, UnitSystem units, double height, String label) {
        return new ReefSheet(site, growth, tried, units, ReefSheet.Side.ABOVE, height).drawn(label);
    }
}
