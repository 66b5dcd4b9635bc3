package org.tidewright.plan.model;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.tidewright.plan.quantity.Amount;

/** Power when the mains fail. */
public record Backup(
        @Entry("a battery that takes over at once") @Nullable
        Battery battery,

        @Entry("a generator somebody has to start") @Nullable
        Generator generator) {

    /** A battery with its inverter or converter. */
    public record Battery(
            @Entry(value = "nominal energy", unit = "J", least = 3600, most = 3.6e8)
            Amount capacity,

            @Entry("what it is made of") Chemistry chemistry,

            @Entry(value = "names of the devices it feeds", least = 1, most = 60)
            List<String> feeds) {}

    /** Kinds of battery. */
    public enum Chemistry {
        LEAD_ACID,
        LITHIUM_IRON_PHOSPHATE
    }

    /** A generator. */
    public record Generator(
            @Entry(value = "power it can give", unit = "W", least = 50, most = 50000)
            Amount power,

            @Entry(value = "fuel at hand", unit = "m^3", least = 0, most = 0.2)
            Amount fuel,

            @Entry(value = "time until somebody has started it", unit = "s", least = 0, most = 864000)
            Amount startedAfter,

            @Entry(value = "names of the devices it feeds", least = 1, most = 60)
            List<String> feeds) {}
}
