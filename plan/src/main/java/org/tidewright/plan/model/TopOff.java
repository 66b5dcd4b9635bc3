package org.tidewright.plan.model;

import org.jspecify.annotations.Nullable;
import org.tidewright.plan.quantity.Amount;

/** Replacement of evaporated water: a reservoir and a pump switched by the level in the last section. */
public record TopOff(
        @Entry(value = "fresh water the reservoir holds when full", unit = "m^3", least = 0, most = 2)
        Amount reservoir,

        @Entry(value = "flow of its pump", unit = "m^3/s", least = 1e-8, most = 0.01)
        Amount pumpFlow,

        @Entry(
                value = "share of saturation with calcium hydroxide, where it holds limewater",
                unit = "1",
                least = 0,
                most = 1)
        @Nullable
        Amount limewater,

        @Entry(value = "time between fillings of the reservoir", unit = "s", least = 3600, most = 365 * 86400.0)
        @Nullable
        Amount refilledEvery) {}
