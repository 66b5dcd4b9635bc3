package org.tidewright.plan.model;

import org.jspecify.annotations.Nullable;
import org.tidewright.plan.quantity.Amount;

/** A vessel apart, fed by a branch of the return line, that overflows into the sump. */
public record Refugium(
        @Entry("its name") String name,

        @Entry(value = "inside length", unit = "m", least = 0.05, most = 10)
        Amount length,

        @Entry(value = "inside width", unit = "m", least = 0.05, most = 5)
        Amount width,

        @Entry(value = "inside height, bottom to rim", unit = "m", least = 0.05, most = 3)
        Amount height,

        @Entry(value = "height of its inside bottom above the finished floor", unit = "m", least = 0, most = 5)
        Amount bottomHeight,

        @Entry("its panes") Glass glass,

        @Entry("what lies over it") Cover cover,

        @Entry(value = "height of the crest it overflows at", unit = "m", least = 0.02, most = 3)
        Amount crest,

        @Entry(value = "length of that crest", unit = "m", least = 0.01, most = 5)
        Amount crestLength,

        @Entry("sump section it overflows into") String into,

        @Entry("the branch that feeds it") PipeLine feed,

        @Entry("where the branch ends, heights above the refugium's bottom")
        ReturnLine.Outlet outlet,

        @Entry("rock in it") @Nullable Rock rock,

        @Entry("sand in it") @Nullable Sand sand,

        @Entry("algae grown in it for harvest") @Nullable Algae algae) {}
