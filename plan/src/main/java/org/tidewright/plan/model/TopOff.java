package org.tidewright.plan.model;

import org.tidewright.plan.quantity.Amount;

/** Replacement of evaporated water: a reservoir and a pump switched by the level in the last section. */
public record TopOff(
        @Entry(value = "fresh water the reservoir holds when full", unit = "m^3", least = 0, most = 2)
        Amount reservoir,

        @Entry(value = "flow of its pump", unit = "m^3/s", least = 1e-8, most = 0.01)
        Amount pumpFlow) {}
