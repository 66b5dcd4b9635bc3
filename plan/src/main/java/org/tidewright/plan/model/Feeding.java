package org.tidewright.plan.model;

import java.time.LocalTime;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.tidewright.plan.quantity.Amount;

/** One kind of food, fed at fixed times. */
public record Feeding(
        @Entry("its name") String name,

        @Entry("what is fed") Food food,

        @Entry(value = "mass fed each time, as fed: thawed and drained, or dry", unit = "kg", least = 1e-6, most = 10)
        Amount mass,

        @Entry(value = "when on a day it is fed, in the order of the day", least = 1, most = 24)
        List<LocalTime> times,

        @Entry(
                value = "time from one day it is fed to the next, in whole days; every day when left out",
                unit = "s",
                least = 86400,
                most = 60 * 86400.0)
        @Nullable
        Amount every) {}
