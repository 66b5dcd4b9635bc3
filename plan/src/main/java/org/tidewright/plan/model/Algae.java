package org.tidewright.plan.model;

import org.jspecify.annotations.Nullable;
import org.tidewright.plan.quantity.Amount;

/** Large algae that are grown, and thinned, to take nitrogen and phosphorus out of the water. */
public record Algae(
        @Entry(value = "mass standing in it now, wet and drained", unit = "kg", least = 0.001, most = 200)
        Amount wetMass,

        @Entry(value = "area of them under the light", unit = "m^2", least = 0.001, most = 50)
        Amount litArea,

        @Entry(value = "time between harvests", unit = "s", least = 86400, most = 365 * 86400.0) @Nullable
        Amount harvestedEvery,

        @Entry(value = "mass left standing after a harvest, wet and drained", unit = "kg", least = 0.0001, most = 200)
        @Nullable
        Amount leftStanding) {}
