package org.tidewright.twin.law.hydraulic;

import org.tidewright.seawater.range.Bounds;
import org.tidewright.seawater.unit.Unit;

/**
 * One section of a sump. An under-flow baffle only passes the level on, so what lies on both sides of it is one section.
 *
 * @param surface free surface
 * @param level of its water over the sump's floor
 * @param wall height of what it spills over: the baffle to the next section, for the last section the sump's rim
 */
public record SumpSection(
        @Unit("m^2") double surface,
        @Unit("m") double level,
        @Unit("m") double wall) {
    public SumpSection {
        Bounds.positive(surface, "m^2", "free surface of a sump section");
        Bounds.notNegative(level, "m", "level of a sump section");
        Bounds.positive(wall, "m", "wall of a sump section");
    }

    SumpSection at(double newLevel) {
        return new SumpSection(surface, newLevel, wall);
    }

    /**
     * Water in the section.
     *
     * @source geometry of upright walls
     */
    @Unit("m^3")
    public double water() {
        return surface * level;
    }
}
