package org.tidewright.plan.model;

import org.jspecify.annotations.Nullable;
import org.tidewright.plan.quantity.Amount;

/** Bounds that must hold. What is left out is filled from common practice. */
public record Limits(
        @Entry(value = "act when the display is colder", unit = "degC", least = 5, most = 30) @Nullable
        Amount actColder,

        @Entry(value = "harm when the display is colder", unit = "degC", least = 5, most = 30) @Nullable
        Amount harmColder,

        @Entry(value = "act when the display is warmer", unit = "degC", least = 20, most = 40) @Nullable
        Amount actWarmer,

        @Entry(value = "harm when the display is warmer", unit = "degC", least = 20, most = 40) @Nullable
        Amount harmWarmer,

        @Entry(value = "act when oxygen is under this share of saturation", unit = "1", least = 0.05, most = 1)
        @Nullable
        Amount actOxygen,

        @Entry(value = "harm when oxygen is under this share of saturation", unit = "1", least = 0.02, most = 1)
        @Nullable
        Amount harmOxygen,

        @Entry(value = "room the sump must keep after a power cut", unit = "m^3", least = 0, most = 1) @Nullable
        Amount roomToSpare) {}
