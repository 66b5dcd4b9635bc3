package org.tidewright.plan.model;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.tidewright.plan.quantity.Amount;

/** The sump: sections in the order the water passes them. Heights are measured up from its inside bottom. */
public record Sump(
        @Entry(value = "inside width, across the flow", unit = "m", least = 0.05, most = 5)
        Amount width,

        @Entry(value = "inside height, bottom to rim", unit = "m", least = 0.05, most = 3)
        Amount height,

        @Entry(value = "height of its inside bottom above the finished floor", unit = "m", least = -3, most = 5)
        Amount bottomHeight,

        @Entry("its panes") Glass glass,

        @Entry("what lies over it") Cover cover,

        @Entry(value = "thickness of the baffles", unit = "m", least = 0.001, most = 0.05)
        Amount baffleThickness,

        @Entry(value = "sections in the order of the flow; the return pump stands in the last", least = 1, most = 12)
        List<Section> sections) {

    /** A part of the sump. */
    public record Section(
            @Entry("its name") String name,

            @Entry(value = "inside length, along the flow", unit = "m", least = 0.01, most = 10)
            Amount length,

            @Entry("the baffle at its end; left out for the last section") @Nullable
            Baffle baffle,

            @Entry(
                    value = "water level while running, only for the last section: the baffles set the others",
                    unit = "m",
                    least = 0.01,
                    most = 3)
            @Nullable
            Amount waterLevel,

            @Entry("rock in it") @Nullable Rock rock,

            @Entry("algae grown in it for harvest") @Nullable
            Algae algae) {}

    /** What parts two sections: a wall the water falls over, or one it passes under. */
    public record Baffle(
            @Entry(value = "height the water falls over", unit = "m", least = 0.01, most = 3) @Nullable
            Amount over,

            @Entry(value = "gap at the bottom the water passes under", unit = "m", least = 0.002, most = 1) @Nullable
            Amount under) {}
}
