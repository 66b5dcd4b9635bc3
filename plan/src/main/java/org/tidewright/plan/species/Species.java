package org.tidewright.plan.species;

import java.util.List;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.tidewright.seawater.unit.Unit;

/** A kind of animal, or of alga that builds lime, with what is known of it. */
public sealed interface Species permits FishSpecies, InvertebrateSpecies {
    /** Its names. */
    Name name();

    /** Where it comes from, in a few words. */
    String region();

    /** What it eats. */
    Fare fare();

    /** What it may do to people and to the water. */
    Danger danger();

    /** In which water it is kept. */
    Warmth warmth();

    /** What it asks of its keeper. */
    Care care();

    /** What else is to be said; may be empty. */
    String notes();

    /**
     * Names.
     *
     * @param scientific genus and species, as accepted
     * @param common as the trade says it
     * @param synonyms other names, of both kinds
     */
    record Name(String scientific, String common, List<String> synonyms) {
        public Name {
            synonyms = List.copyOf(synonyms);
        }

        /** The first word of the scientific name. */
        public String genus() {
            int space = scientific.indexOf(' ');
            return space < 0 ? scientific : scientific.substring(0, space);
        }

        /** Whether a name is one of these, in any case. */
        public boolean is(String called) {
            return scientific.equalsIgnoreCase(called)
                    || common.equalsIgnoreCase(called)
                    || synonyms.stream().anyMatch(called::equalsIgnoreCase);
        }
    }

    /**
     * What it eats.
     *
     * @param foods that it has to be given
     * @param feedings by the keeper, at least, a day
     * @param eats of those that live with it, surely
     * @param mayEat of those, some of its kind or when hungry
     */
    record Fare(
            Set<FoodKind> foods, @Unit("1/d") double feedings, Set<Prey> eats, Set<Prey> mayEat, SpeciesSource source) {
        public Fare {
            foods = Set.copyOf(foods);
            eats = Set.copyOf(eats);
            mayEat = Set.copyOf(mayEat);
        }
    }

    /**
     * What it may do to people and to the water.
     *
     * @param poisons whether it may poison the water when it is hurt or dies
     */
    record Danger(Set<Hazard> hazards, boolean poisons, SpeciesSource source) {
        public Danger {
            hazards = Set.copyOf(hazards);
        }
    }

    /** Temperatures at which it is kept for good. */
    record Warmth(@Unit("degC") double least, @Unit("degC") double most, SpeciesSource source) {}

    /**
     * What it asks of its keeper.
     *
     * @param hardiness 1 to 5, 5 hardy
     * @param sensitivity 1 to 5, 5 takes bad water or a fast change badly
     * @param difficulty 1 a first animal to 6 for experts; 0 never on purpose
     * @param tankAge that it asks for; null for none
     * @param after names, families or groups of easier ones that should have thrived first
     * @param bred how often it is bred or grown by people
     * @param trade what trade is bound to, CITES_II; empty for nothing
     */
    record Care(
            int hardiness,
            int sensitivity,
            int difficulty,
            @Nullable @Unit("month") Double tankAge,
            List<String> after,
            Bred bred,
            String trade,
            SpeciesSource source) {
        public Care {
            after = List.copyOf(after);
        }
    }

    /** How often it is bred or grown by people and not taken from the sea. */
    enum Bred {
        USUAL,
        SOME,
        NO
    }
}
