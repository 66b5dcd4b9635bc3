package org.tidewright.plan.model;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.tidewright.plan.quantity.Amount;

/** How water leaves the display. Heights are measured up from the display's inside bottom. */
public record Overflow(
        @Entry("a drilled box inside the display, or a box hung over the rim and fed by a siphon")
        Kind kind,

        @Entry(value = "height of the crest the water falls over", unit = "m", least = 0.05, most = 5)
        Amount crest,

        @Entry("slots cut into the crest; left out for a smooth crest") @Nullable
        Teeth teeth,

        @Entry(value = "length of a smooth crest; left out for teeth", unit = "m", least = 0.02, most = 10) @Nullable
        Amount smoothLength,

        @Entry("the box behind the crest") Box box,

        @Entry("for a hung box, the part outside the display") @Nullable
        OuterBox outerBox,

        @Entry(value = "pipes from the box to the sump, the working one first", least = 1, most = 4)
        List<Drain> drains) {

    /** Where the box sits. */
    public enum Kind {
        INTERNAL_BOX,
        HANG_ON
    }

    /** A comb of slots. */
    public record Teeth(
            @Entry(value = "number of slots", least = 1, most = 1000)
            int count,

            @Entry(value = "width of one slot", unit = "m", least = 0.001, most = 0.2)
            Amount width,

            @Entry(value = "depth of the slots above the crest", unit = "m", least = 0.002, most = 0.3)
            Amount depth) {}

    /** The box the water falls into. */
    public record Box(
            @Entry(value = "outside length along the pane it stands against", unit = "m", least = 0.03, most = 5)
            Amount length,

            @Entry(value = "outside width, away from that pane", unit = "m", least = 0.03, most = 5)
            Amount width,

            @Entry(value = "wall thickness", unit = "m", least = 0.001, most = 0.05)
            Amount wall,

            @Entry(value = "height of its inside bottom, where it does not reach the display's", unit = "m", least = 0)
            @Nullable
            Amount bottom,

            @Entry(
                    value = "water level in it while running, where a valve sets it; computed for a standpipe",
                    unit = "m",
                    least = 0)
            @Nullable
            Amount runningLevel) {}

    /** The part of a hung overflow outside the display. */
    public record OuterBox(
            @Entry(value = "inside length", unit = "m", least = 0.03, most = 2)
            Amount length,

            @Entry(value = "inside width", unit = "m", least = 0.03, most = 2)
            Amount width) {}

    /** A pipe from the box down to the sump. */
    public record Drain(
            @Entry("its name") String name,

            @Entry("full siphon behind a valve, open standpipe, or dry spare")
            DrainKind kind,

            @Entry(value = "height of its mouth", unit = "m", least = 0, most = 5)
            Amount inlet,

            @Entry("the pipe") PipeLine pipe,

            @Entry("sump section it ends in; the first when left out") @Nullable
            String into) {}

    /** How a drain works. */
    public enum DrainKind {
        /** Runs full; a valve sets the level in the box. */
        SIPHON,
        /** Takes air with the water; its lip sets the level. */
        STANDPIPE,
        /** Dry while all is well. */
        EMERGENCY
    }
}
