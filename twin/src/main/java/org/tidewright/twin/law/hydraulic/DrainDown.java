package org.tidewright.twin.law.hydraulic;

import org.tidewright.seawater.range.Bounds;
import org.tidewright.seawater.unit.Unit;

/**
 * The most water that comes down into the sump when the pump stops, part by part. A bound from geometry alone: no
 * check valve is counted on, since a leaking flap is its normal end.
 *
 * <pre>V = A_d h + A_d z + A_box (level - intake) + pipes + gear</pre>
 *
 * @param overTheCrest water standing above the crest of the overflow
 * @param siphon water drawn back through the return line
 * @param box water of the overflow box above its lowest intake
 * @param pipes contents of return and drain pipes above the sump's level
 * @param gear what skimmers, reactors and other gear fed by the return line let go
 * @source conservation of volume
 */
public record DrainDown(
        @Unit("m^3") double overTheCrest,
        @Unit("m^3") double siphon,
        @Unit("m^3") double box,
        @Unit("m^3") double pipes,
        @Unit("m^3") double gear) {
    public DrainDown {
        Bounds.notNegative(overTheCrest, "m^3", "water over the crest");
        Bounds.notNegative(siphon, "m^3", "water drawn back");
        Bounds.notNegative(box, "m^3", "water of the box");
        Bounds.notNegative(pipes, "m^3", "contents of the pipes");
        Bounds.notNegative(gear, "m^3", "water of the gear");
    }

    /**
     * The bound of a system.
     *
     * @param displaySurface A_d, free surface of the display
     * @param runningHead h, over the crest
     * @param siphonDepth z, below the crest, that the deepest return outlet draws to; see {@link ReturnOutlet#deepest}
     * @param boxSurface A_box
     * @param boxLevel running level of the box
     * @param boxIntake lowest intake of the box's drains, from the same datum
     * @param pipes contents above the sump's level
     * @param gear water that gear lets go
     */
    public static DrainDown of(
            @Unit("m^2") double displaySurface,
            @Unit("m") double runningHead,
            @Unit("m") double siphonDepth,
            @Unit("m^2") double boxSurface,
            @Unit("m") double boxLevel,
            @Unit("m") double boxIntake,
            @Unit("m^3") double pipes,
            @Unit("m^3") double gear) {
        Bounds.positive(displaySurface, "m^2", "free surface of the display");
        Bounds.notNegative(runningHead, "m", "running head over the crest");
        Bounds.notNegative(siphonDepth, "m", "depth of the siphon below the crest");
        Bounds.notNegative(boxSurface, "m^2", "surface of the box");
        Bounds.finite(boxLevel, "m", "level of the box");
        Bounds.finite(boxIntake, "m", "intake of the box");
        return new DrainDown(
                displaySurface * runningHead,
                displaySurface * siphonDepth,
                boxSurface * Math.max(0, boxLevel - boxIntake),
                pipes,
                gear);
    }

    /** All parts together. */
    @Unit("m^3")
    public double total() {
        return overTheCrest + siphon + box + pipes + gear;
    }
}
