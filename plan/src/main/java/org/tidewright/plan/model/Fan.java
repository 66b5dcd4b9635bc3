package org.tidewright.plan.model;

import org.jspecify.annotations.Nullable;
import org.tidewright.plan.quantity.Amount;

/** A fan that cools the water by blowing over it. */
public record Fan(
        @Entry("its name") String name,

        @Entry("vessel or sump section it blows over") String over,

        @Entry(value = "speed of the air over the water", unit = "m/s", least = 0.1, most = 10)
        Amount airSpeed,

        @Entry(value = "temperature it comes on at; it always runs when left out", unit = "degC", least = 5, most = 40)
        @Nullable
        Amount setpoint,

        @Entry(value = "difference between switching on and off", unit = "K", least = 0.05, most = 3) @Nullable
        Amount band,

        @Entry(value = "electrical power", unit = "W", least = 0.1, most = 1000)
        Amount power) {}
