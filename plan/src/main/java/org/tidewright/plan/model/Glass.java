package org.tidewright.plan.model;

import org.tidewright.plan.quantity.Amount;

/** The panes of a vessel. */
public record Glass(
        @Entry(value = "thickness of the upright panes", unit = "m", least = 0.002, most = 0.1)
        Amount panes,

        @Entry(value = "thickness of the bottom pane", unit = "m", least = 0.002, most = 0.1)
        Amount bottom,

        @Entry("whether a brace or frame holds the top edge")
        TopEdge topEdge) {

    /** How the upper edge of a pane is held. */
    public enum TopEdge {
        FREE,
        HELD
    }
}
