package org.tidewright.twin.rehearsal;

import java.util.List;
import org.tidewright.seawater.unit.Unit;
import org.tidewright.twin.mechanism.water.WaterWay;
import org.tidewright.twin.tank.Place;

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

    /**
     * A way the water takes.
     *
     * @param kind what carries it
     * @param flow positive from {@code from} to {@code to}
     */
    public record Stream(
            WaterWay.Kind kind,
            String from,
            String to,
            @Unit("m^3/s") double[] flow) {}

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
