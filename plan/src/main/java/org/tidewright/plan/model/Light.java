package org.tidewright.plan.model;

import org.jspecify.annotations.Nullable;
import org.tidewright.plan.quantity.Amount;

/** A light. */
public record Light(
        @Entry("its name") String name,

        @Entry("vessel it hangs over") String over,

        @Entry(value = "electrical power", unit = "W", least = 0.1, most = 10000)
        Amount power,

        @Entry(value = "hours a day", unit = "s", least = 0, most = 86400)
        Amount daily,

        @Entry(value = "share of its power that ends as heat in the water", unit = "1", least = 0, most = 1) @Nullable
        Amount heatToWater) {}
