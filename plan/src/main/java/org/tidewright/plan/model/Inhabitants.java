package org.tidewright.plan.model;

import java.time.LocalDate;
import java.util.List;
import java.util.OptionalDouble;
import org.jspecify.annotations.Nullable;
import org.tidewright.plan.quantity.Amount;
import org.tidewright.plan.species.Catalogue;
import org.tidewright.plan.species.CoralForm;
import org.tidewright.plan.species.FishSpecies;
import org.tidewright.seawater.unit.Unit;

/** Who lives in the display. */
public record Inhabitants(
        @Entry(value = "fish", most = 500) List<Fish> fish,

        @Entry(value = "corals aside, other animals without a spine", most = 500)
        List<Invertebrate> invertebrates,

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
        Amount alkalinityUse,

        @Entry(
                "day on which they were counted; the log's arrivals and losses count from then on, all of them when left out")
        @Nullable
        LocalDate counted) {

    /** Fish of one kind and size. */
    public record Fish(
            @Entry("what it is") String name,

            @Entry("its species, by the scientific name or one of the trade's") @Nullable
            String species,

            @Entry(value = "mass of one; from species and length when left out", unit = "kg", least = 0.0001, most = 50)
            @Nullable
            Amount mass,

            @Entry(value = "how many", least = 1, most = 1000)
            int count,

            @Entry(value = "length of one, snout to the tip of the tail", unit = "m", least = 0.005, most = 3) @Nullable
            Amount length,

            @Entry("whether it still grows; adult when left out") @Nullable
            GrowthStage stage) {

        /** Where it is in its growth, adult where the plan does not say. */
        public GrowthStage stageOrAdult() {
            return stage == null ? GrowthStage.ADULT : stage;
        }

        /** Mass of one as the plan states it, else that of its species at its length. */
        public @Unit("kg") double massOfOne() {
            return mass != null ? mass.in("kg") : massBySpecies().orElseThrow();
        }

        /** Mass that its species has at its length; empty where the plan names none that is known, or no length. */
        public OptionalDouble massBySpecies() {
            if (species != null
                    && length != null
                    && Catalogue.ofProgram().find(species).orElse(null) instanceof FishSpecies known) {
                return OptionalDouble.of(known.mass(length.in("m")));
            }
            return OptionalDouble.empty();
        }
    }

    /** Where an animal is in its growth. */
    public enum GrowthStage {
        GROWING,
        ADULT
    }

    /** Shrimps, snails, anemones and the like, of one kind. */
    public record Invertebrate(
            @Entry("its species, by the scientific name or one of the trade's")
            String species,

            @Entry(value = "how many", least = 1, most = 10000)
            int count) {}

    /** Colonies of one form. */
    public record Coral(
            @Entry("what it is") String name,

            @Entry("its species, by the scientific name or one of the trade's") @Nullable
            String species,

            @Entry(value = "area its colonies cover, seen from above", unit = "m^2", least = 0.0001, most = 100)
            Amount planArea,

            @Entry("how it grows") CoralForm form,

            @Entry(value = "how many colonies share the area; one when left out", unit = "1", least = 1, most = 1000)
            @Nullable
            Amount colonies,

            @Entry("where the middle of the colony stands, for a row of one") @Nullable
            Spot at) {

        /** How many colonies share the area, one where the plan does not say. */
        public int colonyCount() {
            return colonies == null ? 1 : (int) Math.rint(colonies.in("1"));
        }
    }
}
