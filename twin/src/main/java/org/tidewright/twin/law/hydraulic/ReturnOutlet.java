package org.tidewright.twin.law.hydraulic;

import java.util.Collection;
import java.util.OptionalDouble;
import org.tidewright.seawater.range.Bounds;
import org.tidewright.seawater.unit.Unit;

/**
 * An outlet of the return line in the display, and how deep it can draw the display down when its pump stops.
 *
 * @param depth of its lower edge below the crest of the overflow; negative for an outlet above the crest
 * @param breakHole depth of its highest siphon-break hole below the crest, if it has one
 * @source geometry: the siphon ends when air reaches the outlet or an open hole
 */
public record ReturnOutlet(
        @Unit("m") double depth, @Unit("m") OptionalDouble breakHole) {
    public ReturnOutlet {
        Bounds.finite(depth, "m", "depth of the outlet");
        breakHole.ifPresent(hole -> Bounds.finite(hole, "m", "depth of the break hole"));
    }

    /** An outlet without a break hole. */
    public ReturnOutlet(@Unit("m") double depth) {
        this(depth, OptionalDouble.empty());
    }

    /**
     * How far below the crest this outlet draws the display; 0 when it breaks before.
     *
     * @param holeWorks false to plan as one should, with the hole clogged
     */
    @Unit("m")
    public double drawsDownTo(boolean holeWorks) {
        double breaks = holeWorks ? Math.min(depth, breakHole.orElse(depth)) : depth;
        return Math.max(0, breaks);
    }

    /** The deepest of several: a high outlet does not protect where a lower one still sucks. */
    @Unit("m")
    public static double deepest(Collection<ReturnOutlet> outlets, boolean holesWork) {
        return outlets.stream()
                .mapToDouble(outlet -> outlet.drawsDownTo(holesWork))
                .max()
                .orElse(0);
    }
}
