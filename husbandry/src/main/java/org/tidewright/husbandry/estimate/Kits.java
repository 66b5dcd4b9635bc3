package org.tidewright.husbandry.estimate;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.tidewright.plan.method.TestMethod;
import org.tidewright.plan.method.WaterQuantity;

/**
 * The methods by which some quantities were read, each with the middle of what it showed: its bias is that of this level. A
 * bias that followed each reading could explain any rise of a level whose readings err in proportion.
 */
record Kits(Map<TestMethod, Double> middles) {

    /** Of the readings of some quantities. */
    static Kits of(Inputs inputs, Set<WaterQuantity> quantities) {
        Map<TestMethod, Double> middles = new LinkedHashMap<>();
        for (Inputs.Reading reading : inputs.readings()) {
            if (quantities.contains(reading.quantity())) {
                middles.computeIfAbsent(reading.method(), method -> middle(inputs, method));
            }
        }
        return new Kits(middles);
    }

    private static double middle(Inputs inputs, TestMethod method) {
        double[] values = inputs.readings().stream()
                .filter(reading -> reading.method().equals(method))
                .mapToDouble(Inputs.Reading::value)
                .sorted()
                .toArray();
        return values[values.length / 2];
    }

    /** With others that will be used too, at a level. */
    Kits with(List<TestMethod> others, double level) {
        Map<TestMethod, Double> more = new LinkedHashMap<>(middles);
        others.forEach(method -> more.putIfAbsent(method, level));
        return new Kits(more);
    }

    Set<TestMethod> methods() {
        return middles.keySet();
    }

    double middle(TestMethod method) {
        Double middle = middles.get(method);
        if (middle == null) {
            throw new IllegalArgumentException(method.name() + " is not among " + middles.keySet());
        }
        return middle;
    }

    /** Standard error of the bias of a method before it is compared with anything. */
    double biasError(TestMethod method) {
        return method.biasError(middle(method));
    }
}
