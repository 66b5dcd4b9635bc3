package org.tidewright.twin.law.structure;

import org.tidewright.seawater.range.Bounds;
import org.tidewright.seawater.unit.Gravity;
import org.tidewright.seawater.unit.Unit;

/**
 * Mass of a filled system and what it does to the floor. The law states load and footprint; it never says that a floor
 * is fine.
 *
 * @param water rho V
 * @param rock dry mass
 * @param sand dry mass
 * @param glass mass of all panes
 * @param standAndGear everything else
 */
public record FilledWeight(
        @Unit("kg") double water,
        @Unit("kg") double rock,
        @Unit("kg") double sand,
        @Unit("kg") double glass,
        @Unit("kg") double standAndGear) {
    /**
     * Filled mass from which a structural engineer should be asked whatever the floor.
     *
     * @source common practice
     */
    @Unit("kg")
    public static final double ASK_AN_ENGINEER_FROM = 300;

    /**
     * What the most loaded foot carries more than its share.
     *
     * @source common practice
     */
    @Unit("1")
    public static final double UNEVEN_SHARING = 1.25;

    public FilledWeight {
        Bounds.notNegative(water, "kg", "mass of the water");
        Bounds.notNegative(rock, "kg", "mass of the rock");
        Bounds.notNegative(sand, "kg", "mass of the sand");
        Bounds.notNegative(glass, "kg", "mass of the glass");
        Bounds.notNegative(standAndGear, "kg", "mass of stand and gear");
    }

    /**
     * From volumes and densities.
     *
     * @param waterVolume of the whole system
     * @param waterDensity of its water
     * @param rock dry mass
     * @param sand dry mass
     * @param glassVolume of all panes; its density is {@link Glass#DENSITY}
     * @param standAndGear everything else
     * @source conservation of mass
     */
    public static FilledWeight of(
            @Unit("m^3") double waterVolume,
            @Unit("kg/m^3") double waterDensity,
            @Unit("kg") double rock,
            @Unit("kg") double sand,
            @Unit("m^3") double glassVolume,
            @Unit("kg") double standAndGear) {
        Bounds.notNegative(waterVolume, "m^3", "volume of the water");
        Bounds.positive(waterDensity, "kg/m^3", "density of the water");
        Bounds.notNegative(glassVolume, "m^3", "volume of the glass");
        return new FilledWeight(waterVolume * waterDensity, rock, sand, glassVolume * Glass.DENSITY, standAndGear);
    }

    /**
     * Everything together.
     *
     * @source conservation of mass
     */
    @Unit("kg")
    public double total() {
        return water + rock + sand + glass + standAndGear;
    }

    /**
     * Mean pressure on the floor.
     *
     * <pre>p = m g / footprint</pre>
     *
     * <p>For comparison: homes are commonly designed for 1.5-2.0 kPa averaged over a room (EN 1991-1-1 category A, from
     * memory). A tank always exceeds that locally.
     *
     * @source definition
     */
    @Unit("Pa")
    public double meanPressure(@Unit("m^2") double footprint) {
        return total() * Gravity.STANDARD / Bounds.positive(footprint, "m^2", "footprint");
    }

    /**
     * Load of the most loaded foot.
     *
     * <pre>F = 1.25 m g / n</pre>
     *
     * @param feet n
     * @source common practice
     */
    @Unit("N")
    public double loadOfAFoot(int feet) {
        Bounds.within(feet, "1", 1, 1000, "number of feet");
        return UNEVEN_SHARING * total() * Gravity.STANDARD / feet;
    }

    /**
     * Whether a structural engineer must be asked.
     *
     * @param floorIsSlabOnGround whether the floor is a slab on the ground
     */
    public boolean asksForAnEngineer(boolean floorIsSlabOnGround) {
        return !floorIsSlabOnGround || total() > ASK_AN_ENGINEER_FROM;
    }
}
