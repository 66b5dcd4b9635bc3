package org.tidewright.twin.rehearsal;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.tidewright.seawater.unit.Unit;
import org.tidewright.twin.contract.Body;
import org.tidewright.twin.contract.View;
import org.tidewright.twin.mechanism.water.WaterWay;
import org.tidewright.twin.run.Run;
import org.tidewright.twin.tank.Place;
import org.tidewright.twin.tank.Plumbing;

/** Writes down where the water is while a run goes on. */
final class Recorder implements Run.Sampler {
    /** Pipes and devices are told as one place. */
    private static final String HELD_BACK = "pipes and gear";

    private final double[] times;
    private final Map<String, WaterMovement.Vessel> vessels = new LinkedHashMap<>();
    private final List<WaterMovement.Stream> streams = new ArrayList<>();
    private final Map<Body, Place> places;
    private final List<WaterWay> ways;

    Recorder(Plumbing plumbing, @Unit("s") double[] times) {
        this.times = times;
        this.places = plumbing.places();
        this.ways = plumbing.network().mechanisms().stream()
                .filter(WaterWay.class::isInstance)
                .map(WaterWay.class::cast)
                .toList();
        places.forEach((body, place) -> vessels.computeIfAbsent(
                nameOf(body, place),
                name -> new WaterMovement.Vessel(name, place, new double[times.length], new double[times.length])));
        for (WaterWay way : ways) {
            streams.add(new WaterMovement.Stream(
                    way.kind(),
                    nameOf(way.from(), places.getOrDefault(way.from(), Place.HELD_BACK)),
                    nameOf(way.to(), places.getOrDefault(way.to(), Place.HELD_BACK)),
                    new double[times.length]));
        }
    }

    @Override
    public void take(int sample, View now) {
        places.forEach((body, place) -> {
            WaterMovement.Vessel vessel = vessels.get(nameOf(body, place));
            if (vessel != null) {
                vessel.volume()[sample] += now.volume(body);
                vessel.level()[sample] = now.level(body);
            }
        });
        for (int i = 0; i < ways.size(); i++) {
            streams.get(i).flow()[sample] = ways.get(i).flow(now);
        }
    }

    WaterMovement movement() {
        return new WaterMovement(times, List.copyOf(vessels.values()), List.copyOf(streams));
    }

    private static String nameOf(Body body, Place place) {
        return place == Place.HELD_BACK ? HELD_BACK : body.name();
    }
}
