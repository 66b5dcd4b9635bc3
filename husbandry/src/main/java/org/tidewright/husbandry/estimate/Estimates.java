package org.tidewright.husbandry.estimate;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.tidewright.plan.method.WaterQuantity;

/** What is known of every quantity that was ever read. */
public final class Estimates {
    private final Inputs inputs;
    private final Map<WaterQuantity, Estimate> byQuantity = new EnumMap<>(WaterQuantity.class);

    private Estimates(Inputs inputs) {
        this.inputs = inputs;
    }

    /** Works it out, quantities that know nothing of each other side by side. */
    public static Estimates of(Inputs inputs) {
        Estimates estimates = new Estimates(inputs);
        parts(inputs).parallelStream()
                .map(part -> Map.entry(part, Fitted.of(inputs, part)))
                .toList()
                .forEach(fitted -> estimates.add(fitted.getKey(), fitted.getValue()));
        return estimates;
    }

    /** The minerals, which calcification ties together, and every other quantity by itself. */
    private static List<Set<WaterQuantity>> parts(Inputs inputs) {
        Set<WaterQuantity> minerals = EnumSet.noneOf(WaterQuantity.class);
        Set<WaterQuantity> others = EnumSet.noneOf(WaterQuantity.class);
        for (Inputs.Reading reading : inputs.readings()) {
            (WaterStates.MINERALS.contains(reading.quantity()) ? minerals : others).add(reading.quantity());
        }
        List<Set<WaterQuantity>> parts = new ArrayList<>();
        if (!minerals.isEmpty()) {
            parts.add(minerals);
        }
        others.forEach(quantity -> parts.add(EnumSet.of(quantity)));
        return parts;
    }

    private void add(Set<WaterQuantity> quantities, Fitted fitted) {
        quantities.forEach(quantity -> byQuantity.put(quantity, new Estimate(quantity, fitted)));
    }

    /** What they were worked out from. */
    public Inputs inputs() {
        return inputs;
    }

    /** Of a quantity; empty where it was never read. */
    public Optional<Estimate> of(WaterQuantity quantity) {
        return Optional.ofNullable(byQuantity.get(quantity));
    }

    /** All of them. */
    public Map<WaterQuantity, Estimate> all() {
        return Map.copyOf(byQuantity);
    }
}
