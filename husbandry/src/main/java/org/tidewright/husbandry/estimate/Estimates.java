package org.tidewright.husbandry.estimate;

import java.util.EnumMap;
import java.util.EnumSet;
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

    /** Works it out. */
    public static Estimates of(Inputs inputs) {
        Estimates estimates = new Estimates(inputs);
        Set<WaterQuantity> minerals = EnumSet.noneOf(WaterQuantity.class);
        Set<WaterQuantity> others = EnumSet.noneOf(WaterQuantity.class);
        for (Inputs.Reading reading : inputs.readings()) {
            (WaterStates.MINERALS.contains(reading.quantity()) ? minerals : others).add(reading.quantity());
        }
        if (!minerals.isEmpty()) {
            estimates.add(minerals);
        }
        others.forEach(quantity -> estimates.add(EnumSet.of(quantity)));
        return estimates;
    }

    private void add(Set<WaterQuantity> quantities) {
        Fitted fitted = Fitted.of(inputs, quantities);
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
