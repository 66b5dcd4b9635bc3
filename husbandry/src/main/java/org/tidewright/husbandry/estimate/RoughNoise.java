package org.tidewright.husbandry.estimate;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.tidewright.plan.method.WaterQuantity;

/** Sizes of noise to begin with: large enough that what moves much is not taken for errors. */
final class RoughNoise {
    /** Errors of the prior above what is usual. */
    private static final double LENIENT = 1;

    /** Half of the squares of a standard normal number are smaller. */
    private static final double MIDDLE = 0.455;

    private static final int FEWEST = 6;

    private RoughNoise() {}

    /** Of a timeline's model. */
    static double[] sizes(Timeline timeline, Evidence evidence) {
        Map<WaterQuantity, Double> seen = steps(timeline, evidence);
        return timeline.model().noises().stream()
                .mapToDouble(noise -> {
                    double lenient = noise.prior().usual()
                            * Math.exp(LENIENT * noise.prior().above());
                    return noise.part() == WaterStates.Noise.Part.LEVEL
                            ? Math.max(lenient, seen.getOrDefault(noise.quantity(), 0.0))
                            : lenient;
                })
                .toArray();
    }

    /**
     * By how much each quantity steps from one reading to the next, a √day, errors of both taken off: the middle one, so
     * that a few gross mistakes do not matter.
     */
    private static Map<WaterQuantity, Double> steps(Timeline timeline, Evidence evidence) {
        Map<WaterQuantity, List<Double>> squares = new HashMap<>();
        Map<WaterQuantity, Integer> before = new HashMap<>();
        for (int i = 0; i < timeline.readings().size(); i++) {
            Inputs.Reading reading = timeline.readings().get(i);
            Integer last = before.put(reading.quantity(), i);
            if (last != null && timeline.readings().get(last).time() < reading.time()) {
                double step = reading.value() - timeline.readings().get(last).value();
                double errors = evidence.measurements().get(i).variance()
                        + evidence.measurements().get(last).variance();
                double days = reading.time() - timeline.readings().get(last).time();
                squares.computeIfAbsent(reading.quantity(), quantity -> new ArrayList<>())
                        .add((step * step - MIDDLE * errors) / days);
            }
        }
        Map<WaterQuantity, Double> steps = new HashMap<>();
        squares.forEach((quantity, all) -> {
            all.sort(null);
            double square = all.get(all.size() / 2);
            if (all.size() >= FEWEST && square > 0) {
                steps.put(quantity, Math.sqrt(square / MIDDLE));
            }
        });
        return steps;
    }
}
