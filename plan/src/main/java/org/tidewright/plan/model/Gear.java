package org.tidewright.plan.model;

import org.jspecify.annotations.Nullable;
import org.tidewright.plan.quantity.Amount;

/** A skimmer, reactor, filter or other device that holds water. */
public record Gear(
        @Entry("its name") String name,

        @Entry("vessel or sump section it stands in or drains to")
        String standsIn,

        @Entry(
                value = "water above its stopped level, which runs back when it stops",
                unit = "m^3",
                least = 0,
                most = 1)
        @Nullable
        Amount holdsBack,

        @Entry(value = "water it displaces where it stands", unit = "m^3", least = 0, most = 1) @Nullable
        Amount displaces,

        @Entry(value = "electrical power it draws", unit = "W", least = 0, most = 5000) @Nullable
        Amount power) {}
