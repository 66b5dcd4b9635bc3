package org.tidewright.plan.model;

import org.jspecify.annotations.Nullable;
import org.tidewright.plan.quantity.Amount;

/** The display tank. Heights inside it are measured up from its inside bottom. */
public record Display(
        @Entry(value = "inside length, along the front pane", unit = "m", least = 0.1, most = 20)
        Amount length,

        @Entry(value = "inside width, front to back", unit = "m", least = 0.1, most = 10)
        Amount width,

        @Entry(value = "inside height, bottom to rim", unit = "m", least = 0.1, most = 5)
        Amount height,

        @Entry(value = "height of its inside bottom above the finished floor", unit = "m", least = 0, most = 5)
        Amount bottomHeight,

        @Entry("its panes") Glass glass,

        @Entry("what lies over it") Cover cover,

        @Entry("rock in it") @Nullable Rock rock,

        @Entry("sand in it") @Nullable Sand sand,

        @Entry(value = "water level, only where no overflow sets it", unit = "m", least = 0.05, most = 5) @Nullable
        Amount waterLevel) {}
