package org.tidewright.plan.model;

import java.time.LocalTime;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.tidewright.plan.quantity.Amount;

/**
 * A solution that is dosed: at times of day in equal pulses, or evenly within a window, or, where neither is given, evenly
 * over the whole day.
 */
public record Dosing(
        @Entry("its name") String name,

        @Entry("what is dissolved in it") Salt salt,

        @Entry(
                value = "mass of the salt, with its water of crystallisation, in a volume of the solution",
                unit = "kg/m^3",
                least = 1e-4,
                most = 1200)
        @Nullable
        Amount strength,

        @Entry(value = "for limewater, its share of saturation instead", unit = "1", least = 0.01, most = 1) @Nullable
        Amount saturation,

        @Entry(value = "volume dosed a day", unit = "m^3/s", least = 0.01e-6 / 86400, most = 1.0 / 86400)
        Amount perDay,

        @Entry("vessel or sump section it runs into") String into,

        @Entry(value = "for pulses, when; the day's volume is shared among them equally", most = 48)
        List<LocalTime> times,

        @Entry("for a window, when it begins") @Nullable LocalTime from,

        @Entry(value = "for a window, hours a day", unit = "s", least = 36, most = 86400) @Nullable
        Amount daily,

        @Entry(value = "solution its container holds when full", unit = "m^3", least = 1e-5, most = 1) @Nullable
        Amount container) {}
