package org.tidewright.plan.model;

import org.jspecify.annotations.Nullable;
import org.tidewright.plan.quantity.Amount;

/** A heater with its thermostat. */
public record Heater(
        @Entry("its name") String name,

        @Entry("vessel or sump section it stands in") String standsIn,

        @Entry(value = "electrical power", unit = "W", least = 1, most = 10000)
        Amount power,

        @Entry(value = "temperature it is set to", unit = "degC", least = 5, most = 40)
        Amount setpoint,

        @Entry(value = "difference between switching on and off", unit = "K", least = 0.05, most = 3) @Nullable
        Amount band) {}
