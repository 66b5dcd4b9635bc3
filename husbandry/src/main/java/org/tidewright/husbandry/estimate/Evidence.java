package org.tidewright.husbandry.estimate;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.tidewright.numerics.filter.Measurement;
import org.tidewright.plan.method.WaterQuantity;

/**
 * What is to be learnt from: the readings of a timeline, those of them that are set aside, and jumps that are granted.
 *
 * @param measurements of the readings, in their order
 * @param setAside places of readings that are not learnt from
 * @param jumps before a stop: quantities whose level may have changed there by anything
 */
record Evidence(List<Measurement> measurements, Set<Integer> setAside, Map<Integer, Set<WaterQuantity>> jumps) {

    /** All readings, each with the error its method has at a level. */
    static Evidence of(Timeline timeline, double[] levels) {
        List<Measurement> measurements = new ArrayList<>();
        for (int i = 0; i < levels.length; i++) {
            Inputs.Reading reading = timeline.readings().get(i);
            measurements.add(timeline.model().measure(reading.method(), reading.time(), reading.value(), levels[i]));
        }
        return new Evidence(measurements, Set.of(), Map.of());
    }

    /** For a start: each reading's level is the middle one of its quantity. */
    static double[] middles(Timeline timeline) {
        Map<WaterQuantity, Double> middle = new HashMap<>();
        for (WaterQuantity quantity : timeline.model().quantities()) {
            double[] values = timeline.readings().stream()
                    .filter(reading -> reading.quantity() == quantity)
                    .mapToDouble(Inputs.Reading::value)
                    .sorted()
                    .toArray();
            middle.put(quantity, values.length == 0 ? 0 : values[values.length / 2]);
        }
        return timeline.readings().stream()
                .mapToDouble(reading -> middle.getOrDefault(reading.quantity(), 0.0))
                .toArray();
    }

    boolean counts(int reading) {
        return !setAside.contains(reading);
    }

    Evidence without(int reading) {
        Set<Integer> more = new HashSet<>(setAside);
        more.add(reading);
        return new Evidence(measurements, more, jumps);
    }

    Evidence jumping(int stop, WaterQuantity quantity) {
        Map<Integer, Set<WaterQuantity>> more = new HashMap<>(jumps);
        Set<WaterQuantity> there = new HashSet<>(more.getOrDefault(stop, Set.of()));
        there.add(quantity);
        more.put(stop, there);
        return new Evidence(measurements, setAside, more);
    }

    /** With what another screening of the same readings found. */
    Evidence finding(Evidence other) {
        return new Evidence(measurements, other.setAside, other.jumps);
    }
}
