package org.tidewright.plan.model;

import org.jspecify.annotations.Nullable;
import org.tidewright.plan.quantity.Amount;

/** A chiller with its thermostat. */
public record Chiller(
        @Entry("its name") String name,

        @Entry("vessel or sump section it takes its water from and gives it back to")
        String standsIn,

        @Entry(value = "electrical power", unit = "W", least = 1, most = 20000)
        Amount power,

        @Entry(value = "heat it takes out of the water", unit = "W", least = 1, most = 60000)
        Amount cooling,

        @Entry(value = "temperature it is set to", unit = "degC", least = 5, most = 40)
        Amount setpoint,

        @Entry(value = "difference between switching on and off", unit = "K", least = 0.05, most = 3) @Nullable
        Amount band) {}
