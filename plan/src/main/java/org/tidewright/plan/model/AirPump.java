package org.tidewright.plan.model;

import org.tidewright.plan.quantity.Amount;

/** An air pump with its stone. */
public record AirPump(
        @Entry("its name") String name,

        @Entry("vessel its stone hangs in") String standsIn,

        @Entry(value = "electrical power", unit = "W", least = 0.1, most = 500)
        Amount power,

        @Entry(value = "air it delivers at the stone's depth", unit = "m^3/s", least = 1e-7, most = 0.01)
        Amount airFlow,

        @Entry(value = "depth of the stone under water", unit = "m", least = 0.02, most = 5)
        Amount depth) {}
