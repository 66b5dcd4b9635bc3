package org.tidewright.twin.rehearsal;

import java.util.List;
import org.tidewright.seawater.unit.Unit;

/**
 * Where the water was at each sampled moment of a run. All arrays run along {@link #time()}.
 *
 * @param time seconds after the event, rising
 * @param vessels every place that holds water, the floor among them
 * @param streams every way it moved
 */
public record WaterMovement(@Unit("s") double[] time, List<Vessel> vessels, List<Stream> streams) {

    /**
     * A place that holds water.
     *
     * @param name as in the plan, or one of the fixed names of {@link Place}
     * @param level height of the surface above the vessel's inside bottom; NaN where it has no surface
     * @param volume water in it
     */
    public record Vessel(
            String name,
            Place place,
            @Unit("m") double[] level,
            @Unit("m^3") double[] volume) {}

    /** Kinds of place. */
    public enum Place {
        DISPLAY,
        OVERFLOW_BOX,
        SUMP_SECTION,
        REFUGIUM,
        RESERVOIR,
        /** Pipes and devices above the water, whose content runs back. */
        HELD_BACK,
        FLOOR
    }

    /**
     * A way the water takes.
     *
     * @param kind what carries it
     * @param flow positive from {@code from} to {@code to}
     */
    public record Stream(
            StreamKind kind,
            String from,
            String to,
            @Unit("m^3/s") double[] flow) {}

    /** Kinds of stream. */
    public enum StreamKind {
        WEIR,
        DRAIN,
        RETURN,
        BACK_SIPHON,
        BAFFLE,
        HELD_BACK,
        TOP_OFF,
        SPILL
    }

    /** All water at a sampled moment. */
    public @Unit("m^3") double total(int sample) {
        double sum = 0;
        for (Vessel vessel : vessels) {
            sum += vessel.volume()[sample];
        }
        return sum;
    }

    /** The vessel with this name. */
    public Vessel vessel(String name) {
        return vessels.stream()
                .filter(vessel -> vessel.name().equals(name))
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException("no vessel is called " + name));
    }
}
