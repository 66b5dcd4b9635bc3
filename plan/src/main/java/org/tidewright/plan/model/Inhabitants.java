package org.tidewright.plan.model;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.tidewright.plan.quantity.Amount;

/** Who breathes in the display. */
public record Inhabitants(
        @Entry(value = "fish", most = 500) List<Fish> fish,

        @Entry(value = "living tissue area of all corals", unit = "m^2", least = 0, most = 500) @Nullable
        Amount coralTissue,

        @Entry(value = "corals by form", most = 500) List<Coral> corals,

        @Entry(value = "rock and glass covered by coralline algae", unit = "m^2", least = 0, most = 500) @Nullable
        Amount corallineArea,

        @Entry(
                value = "alkalinity used per volume of water and time, where the keeper has measured it",
                unit = "mol/(m^3*s)",
                least = 0,
                most = 5.0 / 86400)
        @Nullable
        Amount alkalinityUse) {

    /** Fish of one kind and size. */
    public record Fish(
            @Entry("what it is") String name,

            @Entry(value = "mass of one", unit = "kg", least = 0.0001, most = 50)
            Amount mass,

            @Entry(value = "how many", least = 1, most = 1000)
            int count,

            @Entry(value = "length of one, snout to fork of the tail", unit = "m", least = 0.005, most = 3) @Nullable
            Amount length,

            @Entry("whether it still grows; adult when left out") @Nullable
            GrowthStage stage) {

        /** Where it is in its growth, adult where the plan does not say. */
        public GrowthStage stageOrAdult() {
            return stage == null ? GrowthStage.ADULT : stage;
        }
    }

    /** Where an animal is in its growth. */
    public enum GrowthStage {
        GROWING,
        ADULT
    }

    /** Colonies of one form. */
    public record Coral(
            @Entry("what it is") String name,

            @Entry(value = "area its colonies cover, seen from above", unit = "m^2", least = 0.0001, most = 100)
            Amount planArea,

            @Entry("how it grows") Form form) {

        /** Forms of growth that differ in how fast they lay down skeleton, by genus where the rates are known by genus. */
        public enum Form {
            BRANCHING_ACROPORA,
            POCILLOPORA,
            STYLOPHORA,
            BRANCHING_MONTIPORA,
            PLATING_MONTIPORA,
            MASSIVE_PORITES,
            EUPHYLLIA,
            LOBOPHYLLIA,
            FAVITES,
            /** Corals that lay down next to no skeleton. */
            SOFT
        }
    }
}
