package org.tidewright.plan.model;

import java.util.List;
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
        Amount waterLevel,

        @Entry(value = "light measured at places in it, all lights at full power", most = 200)
        List<LightPoint> lightPoints,

        @Entry(value = "flow measured at places in it", most = 200)
        List<FlowPoint> flowPoints) {

    /** Light measured at a place; its places are told as a {@link Spot}'s are. */
    public record LightPoint(
            @Entry(value = "distance from the left pane, inside, along the front", unit = "m", least = 0, most = 20)
            Amount x,

            @Entry(value = "distance from the front pane, inside", unit = "m", least = 0, most = 10)
            Amount y,

            @Entry(value = "height above the display's inside bottom", unit = "m", least = 0, most = 5)
            Amount height,

            @Entry(
                    value = "photosynthetically active light (400-700 nm) measured there",
                    unit = "mol/(m^2*s)",
                    least = 1e-7,
                    most = 3000e-6)
            Amount par) {}

    /** Flow measured at a place, the mean of a minute; its places are told as a {@link Spot}'s are. */
    public record FlowPoint(
            @Entry(value = "distance from the left pane, inside, along the front", unit = "m", least = 0, most = 20)
            Amount x,

            @Entry(value = "distance from the front pane, inside", unit = "m", least = 0, most = 10)
            Amount y,

            @Entry(value = "height above the display's inside bottom", unit = "m", least = 0, most = 5)
            Amount height,

            @Entry(value = "speed of the water measured there", unit = "m/s", least = 0.0001, most = 3)
            Amount flow) {}
}
