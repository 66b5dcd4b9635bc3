package org.tidewright.plan.model;

import org.tidewright.plan.quantity.Amount;

/** What the system stands on. */
public record Stand(
        @Entry(value = "mass of stand, hood and gear", unit = "kg", least = 0, most = 5000)
        Amount mass,

        @Entry(value = "number of feet; 0 where it stands on its whole area", least = 0, most = 100)
        int feet,

        @Entry("what carries it") Floor floor) {

    /** Kinds of floor. */
    public enum Floor {
        SLAB_ON_GROUND,
        SUSPENDED
    }
}
