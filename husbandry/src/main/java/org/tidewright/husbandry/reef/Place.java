package org.tidewright.husbandry.reef;

import org.tidewright.plan.model.Spot;
import org.tidewright.seawater.unit.Unit;

/**
 * A place in the display, measured along its inside.
 *
 * @param x along the front, from the left pane
 * @param y from the front pane to the back
 * @param height above the inside bottom
 */
public record Place(
        @Unit("m") double x, @Unit("m") double y, @Unit("m") double height) {
    public static Place of(Spot spot) {
        return new Place(spot.x().in("m"), spot.y().in("m"), spot.height().in("m"));
    }

    /** Distance seen from above. */
    public @Unit("m") double beside(Place other) {
        return Math.hypot(x - other.x, y - other.y);
    }

    /** Distance as the crow flies. */
    public @Unit("m") double from(Place other) {
        return Math.hypot(beside(other), height - other.height);
    }

    double[] coordinates() {
        return new double[] {x, y, height};
    }
}
