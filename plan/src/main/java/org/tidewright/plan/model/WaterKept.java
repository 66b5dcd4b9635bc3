package org.tidewright.plan.model;

import org.jspecify.annotations.Nullable;
import org.tidewright.plan.quantity.Amount;

/** The water as it is kept when all runs. */
public record WaterKept(
        @Entry(value = "practical salinity (PSS-78)", unit = "1", least = 5, most = 42)
        Amount salinity,

        @Entry(value = "temperature", unit = "degC", least = 10, most = 35)
        Amount temperature,

        @Entry(value = "oxygen before a failure, as a share of saturation", unit = "1", least = 0.3, most = 1.5)
        @Nullable
        Amount oxygenSaturation) {}
