package org.tidewright.plan.model;

import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.tidewright.plan.quantity.Amount;

/** A run of pipe with its fittings. */
public record PipeLine(
        @Entry(value = "inner diameter", unit = "m", least = 0.003, most = 0.3)
        Amount bore,

        @Entry(value = "length along the pipe", unit = "m", least = 0.01, most = 200)
        Amount length,

        @Entry(value = "roughness of its wall; smooth plastic when left out", unit = "m", least = 0, most = 0.002)
        @Nullable
        Amount roughness,

        @Entry("how many of each fitting") Map<Fitting, Integer> fittings) {}
