package org.tidewright.husbandry.estimate;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import org.tidewright.numerics.filter.Measurement;
import org.tidewright.plan.method.WaterQuantity;

/**
 * What is to be learnt from: the readings of a timeline, those of them that are set aside, and jumps that are granted.
 *
 * @param measurements of the readings, in their order
 * @param setAside places of readings that are not learnt from
 * @param jumps places of readings just before which the level may have changed by anything
 */
record Evidence(List<Measurement> measurements, BitSet setAside, BitSet jumps) {

    /** Readings around one, itself included, among which the middle one is sought. */
    private static final int AROUND = 7;

    /** All readings, each with the error its method has. */
    static Evidence of(Timeline timeline) {
        List<Measurement> measurements = new ArrayList<>();
        double[] levels = middles(timeline.readings());
        for (int i = 0; i < levels.length; i++) {
            Inputs.Reading reading = timeline.readings().get(i);
            measurements.add(timeline.model().measure(reading.method(), reading.time(), reading.value(), levels[i]));
        }
        return new Evidence(measurements, new BitSet(), new BitSet());
    }

    /**
     * The level at which each reading's method errs: the middle one of the readings around it. Neither its own, which is
     * as wrong as the reading, nor the estimated one, by which a level that is taken too low would be believed the more.
     */
    private static double[] middles(List<Inputs.Reading> readings) {
        Map<WaterQuantity, List<Integer>> places = new EnumMap<>(WaterQuantity.class);
        for (int i = 0; i < readings.size(); i++) {
            places.computeIfAbsent(readings.get(i).quantity(), quantity -> new ArrayList<>())
                    .add(i);
        }
        double[] middles = new double[readings.size()];
        for (List<Integer> of : places.values()) {
            int count = Math.min(AROUND, of.size());
            for (int i = 0; i < of.size(); i++) {
                int first = Math.max(0, Math.min(i - count / 2, of.size() - count));
                double[] around = of.subList(first, first + count).stream()
                        .mapToDouble(place -> readings.get(place).value())
                        .sorted()
                        .toArray();
                middles[of.get(i)] = (around[(count - 1) / 2] + around[count / 2]) / 2;
            }
        }
        return middles;
    }

    boolean counts(int reading) {
        return !setAside.get(reading);
    }

    boolean jumps(int reading) {
        return jumps.get(reading);
    }

    Evidence without(int reading) {
        return new Evidence(measurements, with(setAside, reading), jumps);
    }

    Evidence jumping(int before) {
        return new Evidence(measurements, setAside, with(jumps, before));
    }

    /** With what another screening of the same readings found. */
    Evidence finding(Evidence other) {
        return new Evidence(measurements, other.setAside, other.jumps);
    }

    private static BitSet with(BitSet places, int place) {
        BitSet more = (BitSet) places.clone();
        more.set(place);
        return more;
    }
}
