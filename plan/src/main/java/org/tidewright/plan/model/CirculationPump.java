package org.tidewright.plan.model;

import org.tidewright.plan.quantity.Amount;

/** A pump that moves water inside one vessel. */
public record CirculationPump(
        @Entry("its name") String name,

        @Entry("vessel it stands in") String standsIn,

        @Entry(value = "electrical power", unit = "W", least = 0.1, most = 1000)
        Amount power) {}
