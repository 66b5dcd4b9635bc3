package org.tidewright.plan.model;

import org.jspecify.annotations.Nullable;
import org.tidewright.plan.quantity.Amount;

/** A skimmer, reactor, filter or other device that holds water. */
public record Gear(
        @Entry("its name") String name,

        @Entry("vessel or sump section it stands in or drains to")
        String standsIn,

        @Entry(
                value = "water above its stopped level, which runs back when it stops",
                unit = "m^3",
                least = 0,
                most = 1)
        @Nullable
        Amount holdsBack,

        @Entry(value = "water it displaces where it stands", unit = "m^3", least = 0, most = 1) @Nullable
        Amount displaces,

        @Entry(value = "electrical power it draws", unit = "W", least = 0, most = 5000) @Nullable
        Amount power,

        @Entry("for a skimmer, how it works") @Nullable Skimming skims,

        @Entry("for a filter, the media the water is pumped through") @Nullable
        Media media,

        @Entry("for a calcium reactor, how it runs") @Nullable
        Reactor reactor,

        @Entry("for a sock, fleece or other fine filter, how it runs") @Nullable
        Straining strains) {

    /** How a skimmer runs: fine air bubbles in a column of water carry organic matter into a cup. */
    public record Skimming(
            @Entry(value = "water through it", unit = "m^3/s", least = 1e-3 / 3600, most = 0.02)
            Amount waterFlow,

            @Entry(value = "air drawn into it", unit = "m^3/s", least = 1e-3 / 3600, most = 0.02)
            Amount airFlow,

            @Entry(value = "liquid it throws out, a day", unit = "m^3/s", least = 0, most = 20e-3 / 86400) @Nullable
            Amount skimmate,

            @Entry("the air it draws; that of the room when left out") @Nullable
            Air air) {

        /** The air it draws, that of the room where the plan does not say. */
        public Air airOrRoom() {
            return air == null ? Air.ROOM : air;
        }
    }

    /** Where a skimmer's air comes from. */
    public enum Air {
        ROOM,
        OUTDOORS,
        /** Through a canister that takes carbon dioxide out. */
        SCRUBBED
    }

    /** Media in a reactor or a bag the water is led through. */
    public record Media(
            @Entry("what it is") Kind kind,

            @Entry(value = "mass of it, as bought", unit = "kg", least = 0.001, most = 100)
            Amount mass,

            @Entry(value = "water led through it", unit = "m^3/s", least = 0.1e-3 / 3600, most = 0.01)
            Amount waterFlow,

            @Entry(value = "time after which it is replaced", unit = "s", least = 86400, most = 1000 * 86400.0)
            @Nullable
            Amount changedEvery) {

        /** Kinds of media. */
        public enum Kind {
            /** Iron oxyhydroxide in grains, which binds phosphate. */
            IRON_OXIDE,
            /** Activated carbon, which binds dissolved organic matter. */
            ACTIVATED_CARBON
        }
    }

    /** A calcium reactor: carbon dioxide dissolves carbonate media, the water that leaves is rich in alkalinity. */
    public record Reactor(
            @Entry(value = "water that leaves it", unit = "m^3/s", least = 0.01e-3 / 3600, most = 0.1e-3)
            Amount effluent,

            @Entry(
                    value = "pH in its chamber, as a probe set with NBS buffers reads",
                    unit = "1",
                    least = 5.5,
                    most = 8)
            Amount chamberPh,

            @Entry(value = "mass of media in it, when dry", unit = "kg", least = 0.01, most = 200)
            Amount mediaMass) {}

    /** A sock, fleece, floss or cartridge that holds particles back until it is changed or washed. */
    public record Straining(
            @Entry(value = "water through it", unit = "m^3/s", least = 1e-3 / 3600, most = 0.02)
            Amount waterFlow,

            @Entry(value = "share of the particles in that water it holds back", unit = "1", least = 0, most = 1)
            @Nullable
            Amount share,

            @Entry(value = "time after which it is changed or washed", unit = "s", least = 86400, most = 365 * 86400.0)
            Amount changedEvery) {}
}
