package org.tidewright.plan.model;

import org.tidewright.plan.quantity.Amount;

/** A place in the display, as somebody who stands before it measures along its inside. */
public record Spot(
        @Entry(value = "distance from the left pane, inside, along the front", unit = "m", least = 0, most = 20)
        Amount x,

        @Entry(value = "distance from the front pane, inside", unit = "m", least = 0, most = 10)
        Amount y,

        @Entry(value = "height above the display's inside bottom", unit = "m", least = 0, most = 5)
        Amount height) {}
