package org.tidewright.plan.model;

import java.time.LocalTime;
import org.jspecify.annotations.Nullable;
import org.tidewright.plan.quantity.Amount;

/** Water that is taken out and replaced by new, again and again. */
public record WaterChange(
        @Entry("its name") String name,

        @Entry(value = "water changed each time", unit = "m^3", least = 1e-5, most = 100)
        Amount volume,

        @Entry(value = "time from one to the next, in whole days", unit = "s", least = 86400, most = 365 * 86400.0)
        Amount every,

        @Entry("when on that day") LocalTime at,

        @Entry(
                value = "share of the waste that lies on the ground which is siphoned off with it; none when left out",
                unit = "1",
                least = 0,
                most = 1)
        @Nullable
        Amount siphoned) {}
