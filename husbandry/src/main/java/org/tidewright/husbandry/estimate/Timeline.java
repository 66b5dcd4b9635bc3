package org.tidewright.husbandry.estimate;

import java.util.ArrayList;
import java.util.List;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.tidewright.numerics.filter.Passage;
import org.tidewright.numerics.filter.Stretch;

/**
 * Where a filter has to stop: every time at which something was read, changed, dosed by hand or moved. What was read at the time of a water
 * change was read before it.
 *
 * @param stops in order of time; the last is the end of what is known
 */
record Timeline(WaterModel model, List<Inputs.Reading> readings, List<Stop> stops) {
    /**
     * One time.
     *
     * @param since time of the stop before
     * @param stretch of time from there to here
     * @param passage that leads here; its noise is filled in anew for every trial
     * @param readings places in the list of all
     * @param events what then happened at once
     */
    record Stop(double since, double time, Stretch stretch, Passage passage, int[] readings, List<Passage> events) {}

    /** Of a model's quantities. */
    static Timeline of(WaterModel model) {
        Inputs inputs = model.inputs();
        List<Inputs.Reading> readings = inputs.readings().stream()
                .filter(reading -> model.quantities().contains(reading.quantity()))
                .toList();
        TreeMap<Double, List<Integer>> read = new TreeMap<>();
        for (int i = 0; i < readings.size(); i++) {
            read.computeIfAbsent(readings.get(i).time(), time -> new ArrayList<>())
                    .add(i);
        }
        TreeMap<Double, List<Passage>> happened = new TreeMap<>();
        for (Renewal renewal : inputs.renewals()) {
            if (renewal.time() >= 0
                    && renewal.time() <= inputs.until()
                    && model.quantities().stream().anyMatch(renewal.newWater()::containsKey)) {
                happened.computeIfAbsent(renewal.time(), time -> new ArrayList<>())
                        .add(model.renewal(renewal));
            }
        }
        for (Inputs.Upset upset : inputs.upsets()) {
            happened.computeIfAbsent(upset.time(), time -> new ArrayList<>()).add(model.upset());
        }
        TreeMap<Double, Boolean> times = new TreeMap<>();
        read.keySet().forEach(time -> times.put(time, true));
        happened.keySet().forEach(time -> times.put(time, true));
        for (Solution solution : inputs.solutions()) {
            if (model.doses(solution)) {
                Stream.concat(solution.programme().stream(), solution.pulses().stream())
                        .map(Solution.Portion::time)
                        .filter(time -> time > 0 && time < inputs.until())
                        .forEach(time -> times.put(time, true));
            }
        }
        times.put(inputs.until(), true);
        List<Stop> stops = new ArrayList<>();
        double since = 0;
        for (double time : times.keySet()) {
            Stretch stretch = model.structure().stretch(time - since);
            stops.add(new Stop(
                    since,
                    time,
                    stretch,
                    model.passage(stretch, since),
                    read.getOrDefault(time, List.of()).stream()
                            .mapToInt(Integer::intValue)
                            .toArray(),
                    happened.getOrDefault(time, List.of())));
            since = time;
        }
        return new Timeline(model, readings, List.copyOf(stops));
    }

    /** The part of it that lies after a time; what was read and happened before is not known there. */
    Timeline after(double time) {
        return new Timeline(
                model,
                readings,
                stops.stream().filter(stop -> stop.time() > time).toList());
    }

    /** Fills in the noise of every passage. */
    void shake(double[] sizes) {
        for (Stop stop : stops) {
            stop.stretch().shake(stop.passage(), sizes);
        }
    }
}
