package org.tidewright.plan.model;

import org.jspecify.annotations.Nullable;
import org.tidewright.plan.quantity.Amount;

/** Rock in a vessel. */
public record Rock(
        @Entry(value = "mass when dry", unit = "kg", least = 0, most = 5000)
        Amount dryMass,

        @Entry(value = "water displaced per dry mass", unit = "m^3/kg", least = 0.2e-3, most = 1.2e-3) @Nullable
        Amount displaces,

        @Entry(
                value = "height of its highest part above the vessel's bottom; below the lowest level when left out",
                unit = "m",
                least = 0,
                most = 5)
        @Nullable
        Amount top,

        @Entry("what lives in it; live when left out") @Nullable
        State state) {

    /** What lives in it, live where the plan does not say. */
    public State stateOrLive() {
        return state == null ? State.LIVE : state;
    }

    /** How far bacteria and small animals have settled in rock. */
    public enum State {
        /** Dry or dead: nothing in it works yet. */
        DRY,
        /** Was dry, has been seeded and is still ripening. */
        SEEDED,
        /** Ripe. */
        LIVE
    }
}
