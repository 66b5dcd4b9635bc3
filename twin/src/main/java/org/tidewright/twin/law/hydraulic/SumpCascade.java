package org.tidewright.twin.law.hydraulic;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import org.tidewright.numerics.root.Bracketed;
import org.tidewright.seawater.range.Bounds;
import org.tidewright.seawater.unit.Unit;

/**
 * The sections of a sump in the order of flow, each spilling over its wall into the next. Only the last one floats:
 * every litre that comes or goes shows there first. When it rises over the baffle before it, the two become one, and so
 * on from the end.
 *
 * @param sections in the order of flow; the last one's wall is the rim of the sump
 * @source conservation of volume
 */
public record SumpCascade(List<SumpSection> sections) {
    public SumpCascade {
        if (sections.isEmpty()) {
            throw new IllegalArgumentException("a sump has 0 sections; it must have 1 or more");
        }
        sections = List.copyOf(sections);
        double rim = sections.get(sections.size() - 1).wall();
        for (SumpSection section : sections) {
            Bounds.within(section.level(), "m", 0, rim, "level of a sump section");
            Bounds.within(section.wall(), "m", 0, rim, "wall of a sump section");
        }
    }

    /** Height of the rim. */
    @Unit("m")
    public double rim() {
        return last().wall();
    }

    /** Water in all sections. */
    @Unit("m^3")
    public double water() {
        return sections.stream().mapToDouble(SumpSection::water).sum();
    }

    /**
     * Room below a height, less nothing for gear that stands there.
     *
     * <pre>V_free = sum of A_i max(z - level_i, 0)</pre>
     *
     * @param height z, usually the rim less 30 mm (common practice)
     */
    @Unit("m^3")
    public double freeVolume(@Unit("m") double height) {
        Bounds.within(height, "m", 0, rim(), "height to fill to");
        double room = 0;
        for (SumpSection section : sections) {
            room += section.surface() * Math.max(0, height - section.level());
        }
        return room;
    }

    /**
     * Highest level at which the last section may run so that a volume still finds room below a height. The line to
     * mark on the sump.
     *
     * <pre>A_n (H - z) + sum over the others of A_i max(H - max(level_i, z), 0) = V</pre>
     *
     * @param volume V that will come down
     * @param height H, that the water may reach
     * @return empty when even an empty last section does not make the room
     * @checkvalue sections 0.198, 0.090, 0.1116 m^2 at 0.30, 0.25, 0.20 m, 52.31 L below 0.42 m: 0.2784 m
     */
    @Unit("m")
    public OptionalDouble highestRunningLevel(@Unit("m^3") double volume, @Unit("m") double height) {
        Bounds.notNegative(volume, "m^3", "volume that comes down");
        Bounds.within(height, "m", 0, rim(), "height to fill to");
        if (volume > room(0, height)) {
            return OptionalDouble.empty();
        }
        return OptionalDouble.of(volume == 0 ? height : Bracketed.root(z -> room(z, height) - volume, 0, height));
    }

    /** Room below a height with the last section run at a level, and what that drowns standing as high. */
    private double room(double lastLevel, double height) {
        double room = last().surface() * (height - lastLevel);
        for (int i = 0; i < sections.size() - 1; i++) {
            room += sections.get(i).surface()
                    * Math.max(0, height - Math.max(sections.get(i).level(), lastLevel));
        }
        return room;
    }

    /** The same sump with its last section run at another level, and what that drowns standing as high. */
    public SumpCascade withLastLevel(@Unit("m") double level) {
        List<SumpSection> moved = new ArrayList<>(sections);
        int end = sections.size() - 1;
        moved.set(end, last().at(level));
        for (int i = end - 1; i >= 0 && level > backedUpWall(i); i--) {
            moved.set(i, sections.get(i).at(Math.max(sections.get(i).level(), level)));
        }
        return new SumpCascade(moved);
    }

    /**
     * Water that the return pump can still move when nothing comes down any more: the last section above the pump's
     * intake, and of the others what stands above their walls. The rest stays behind.
     *
     * @param intake of the pump over the sump's floor
     */
    @Unit("m^3")
    public double movable(@Unit("m") double intake) {
        Bounds.notNegative(intake, "m", "intake of the pump");
        double volume = last().surface() * Math.max(0, last().level() - intake);
        for (int i = 0; i < sections.size() - 1; i++) {
            volume += sections.get(i).surface() * Math.max(0, sections.get(i).level() - backedUpWall(i));
        }
        return volume;
    }

    /**
     * The sump after a volume has come down into its first section and everything has come to rest.
     *
     * @param volume poured in; what runs over the baffles collects from the end
     */
    public Settled settle(@Unit("m^3") double volume) {
        Bounds.notNegative(volume, "m^3", "volume that comes down");
        int end = sections.size() - 1;
        double[] level = new double[sections.size()];
        double carried = volume;
        for (int i = 0; i < end; i++) {
            double full = backedUpWall(i);
            double water = sections.get(i).water() + carried;
            level[i] = Math.min(full, water / sections.get(i).surface());
            carried = Math.max(0, water - full * sections.get(i).surface());
        }
        double pool = last().surface();
        double poolLevel = last().level() + carried / pool;
        int first = end;
        while (first > 0 && poolLevel > backedUpWall(first - 1)) {
            double wall = backedUpWall(first - 1);
            double above = (poolLevel - wall) * pool;
            double surface = sections.get(first - 1).surface();
            double room = (wall - level[first - 1]) * surface;
            poolLevel = wall;
            if (above < room) {
                level[first - 1] += above / surface;
                break;
            }
            first--;
            pool += surface;
            poolLevel += (above - room) / pool;
        }
        double spilled = Math.max(0, (poolLevel - rim()) * pool);
        for (int i = first; i <= end; i++) {
            level[i] = Math.min(rim(), poolLevel);
        }
        List<SumpSection> rested = new ArrayList<>();
        for (int i = 0; i <= end; i++) {
            rested.add(sections.get(i).at(level[i]));
        }
        return new Settled(new SumpCascade(rested), spilled);
    }

    /**
     * A sump at rest.
     *
     * @param sump with its new levels
     * @param spilled over the rim
     */
    public record Settled(SumpCascade sump, @Unit("m^3") double spilled) {}

    private SumpSection last() {
        return sections.get(sections.size() - 1);
    }

    /** Height a section must reach before its water goes on: a higher baffle further down backs it up. */
    private double backedUpWall(int section) {
        double highest = 0;
        for (int i = section; i < sections.size() - 1; i++) {
            highest = Math.max(highest, sections.get(i).wall());
        }
        return highest;
    }
}
