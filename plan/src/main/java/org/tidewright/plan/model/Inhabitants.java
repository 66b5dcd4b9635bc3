package org.tidewright.plan.model;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.tidewright.plan.quantity.Amount;

/** Who breathes in the display. */
public record Inhabitants(
        @Entry(value = "fish", most = 500) List<Fish> fish,

        @Entry(value = "living tissue area of all corals", unit = "m^2", least = 0, most = 500) @Nullable
        Amount coralTissue) {

    /** Fish of one kind and size. */
    public record Fish(
            @Entry("what it is") String name,

            @Entry(value = "mass of one", unit = "kg", least = 0.0001, most = 50)
            Amount mass,

            @Entry(value = "how many", least = 1, most = 1000)
            int count) {}
}
