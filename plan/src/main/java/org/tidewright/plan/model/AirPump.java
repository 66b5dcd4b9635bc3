package org.tidewright.plan.model;

import org.jspecify.annotations.Nullable;
import org.tidewright.plan.quantity.Amount;

/** An air pump with its stone. */
public record AirPump(
        @Entry("its name") String name,

        @Entry("vessel its stone hangs in") String standsIn,

        @Entry(value = "electrical power", unit = "W", least = 0.1, most = 500)
        Amount power,

        @Entry(value = "air it delivers at the stone's depth", unit = "m^3/s", least = 1e-7, most = 0.01)
        Amount airFlow,

        @Entry(value = "depth of the stone under water", unit = "m", least = 0.02, most = 5)
        Amount depth,

        @Entry("a sponge the rising air draws water through") @Nullable
        Sponge sponge) {

    /** A sponge filter: foam in whose pores nitrifying bacteria live. */
    public record Sponge(
            @Entry(value = "foam in it", unit = "m^3", least = 1e-5, most = 1)
            Amount foam,

            @Entry("what lives in it when animals come; live when left out")
            Rock.@Nullable State state) {

        /** What lives in it, live where the plan does not say. */
        public Rock.State stateOrLive() {
            return state == null ? Rock.State.LIVE : state;
        }
    }
}
