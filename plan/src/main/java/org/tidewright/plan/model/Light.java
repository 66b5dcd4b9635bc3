package org.tidewright.plan.model;

import java.time.LocalTime;
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
        Amount heatToWater,

        @Entry("when it comes on") @Nullable LocalTime starts,

        @Entry(
                value = "time it takes to reach full power, and to go out again, within its hours",
                unit = "s",
                least = 0,
                most = 43200)
        @Nullable
        Amount ramp,

        @Entry(
                value =
                        "photosynthetically active light (400-700 nm) it gives at full power, on the average of what grows below",
                unit = "mol/(m^2*s)",
                least = 1e-6,
                most = 3000e-6)
        @Nullable
        Amount par) {}
