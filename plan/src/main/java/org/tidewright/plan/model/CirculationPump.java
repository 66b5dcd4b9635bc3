package org.tidewright.plan.model;

import java.time.LocalTime;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.tidewright.plan.quantity.Amount;

/** A pump that moves water inside one vessel. */
public record CirculationPump(
        @Entry("its name") String name,

        @Entry("vessel it stands in") String standsIn,

        @Entry(value = "electrical power at full speed", unit = "W", least = 0.1, most = 1000)
        Amount power,

        @Entry(value = "hours of the day at another speed; at full speed outside them", most = 24)
        List<ProgrammePart> programme) {

    /** Hours of every day at one speed. */
    public record ProgrammePart(
            @Entry("when it begins") LocalTime from,

            @Entry(value = "hours a day it lasts", unit = "s", least = 60, most = 86400)
            Amount daily,

            @Entry(value = "speed as a share of full speed; 0 stands still", unit = "1", least = 0, most = 1)
            Amount speed,

            @Entry(
                    value = "for pulses of seconds, share of the time it runs at that speed, standing still between",
                    unit = "1",
                    least = 0.01,
                    most = 1)
            @Nullable
            Amount running) {}
}
