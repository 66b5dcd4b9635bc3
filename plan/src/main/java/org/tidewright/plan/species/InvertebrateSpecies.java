package org.tidewright.plan.species;

import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.tidewright.seawater.unit.Unit;

/** A coral, another invertebrate, or an alga that builds lime. */
public record InvertebrateSpecies(
        Name name,
        Group group,
        String region,
        @Nullable Extent extent,
        @Nullable Place place,
        Contest contest,
        @Nullable Extension extension,
        @Nullable Skeleton skeleton,
        @Nullable CoralForm form,
        Fare fare,
        Temper temper,
        Danger danger,
        Warmth warmth,
        Care care,
        String notes)
        implements Species {

    /** A shrimp up to this length is small; this project's own. */
    private static final double SMALL = 0.03;

    /** What kind of animal it is, as keepers sort them. */
    public enum Group {
        SPS("stony coral of small polyps", true),
        LPS("stony coral of large polyps", true),
        SOFT("soft coral", true),
        GORGONIAN("gorgonian", true),
        ZOANTHID("zoanthid", true),
        CORALLIMORPH("mushroom anemone", true),
        ANEMONE("anemone", false),
        /** Corals without symbionts, which have to be fed. */
        NPS("coral without symbionts", true),
        HYDROCORAL("hydrocoral", true),
        CLAM("clam", false),
        SHRIMP("shrimp", false),
        CRAB("crab", false),
        SNAIL("snail", false),
        URCHIN("urchin", false),
        STAR("sea star", false),
        CUCUMBER("sea cucumber", false),
        WORM("worm", false),
        SLUG("sea slug", false),
        CEPHALOPOD("octopus", false),
        CALCAREOUS_ALGAE("alga that builds lime", false);

        private final String words;
        private final boolean coral;

        Group(String words, boolean coral) {
            this.words = words;
            this.coral = coral;
        }

        /** As a sentence says it. */
        public String words() {
            return words;
        }

        /** Whether it is placed and grows as a coral. */
        public boolean isCoral() {
            return coral;
        }
    }

    /** How large one becomes, at its widest; what covers rock without end has none. */
    public record Extent(@Unit("m") double most, SpeciesSource source) {}

    /**
     * Where it thrives.
     *
     * @param lightLeast photosynthetically active light at the animal
     */
    public record Place(
            @Unit("mol/(m^2*s)") double lightLeast,
            @Unit("mol/(m^2*s)") double lightMost,
            Flow flow,
            SpeciesSource source) {}

    /** How hard the water moves. */
    public enum Flow {
        LOW,
        LOW_MEDIUM,
        MEDIUM,
        MEDIUM_HIGH,
        HIGH,
        ANY
    }

    /**
     * How it fights for room, and how it takes changes.
     *
     * @param reach of its sweepers or stings
     * @param sting 0 to 3, how badly it hurts neighbours
     * @param chemical 0 to 3, how much it poisons them through the water
     * @param immune genera that may touch it
     * @param alkalinity 1 to 5, how badly it takes a change of alkalinity
     */
    public record Contest(
            @Unit("m") double reach,
            int sting,
            int chemical,
            Set<String> immune,
            int alkalinity,
            SpeciesSource source) {
        public Contest {
            immune = Set.copyOf(immune);
        }
    }

    /** How fast its edge or branches grow. */
    public record Extension(
            @Unit("m/year") double low, @Unit("m/year") double high, SpeciesSource source) {}

    /** Lime it lays down on the area seen from above, as CaCO3. */
    public record Skeleton(
            @Unit("kg/(m^2*d)") double usual,
            @Unit("kg/(m^2*d)") double low,
            @Unit("kg/(m^2*d)") double high,
            SpeciesSource source) {}

    /**
     * How it moves and treats others.
     *
     * @param motility 0 fixed, 1 creeps or spreads, 2 walks, 3 wanders and may end in a pump
     * @param sand depth of fine sand it lives in; 0 for none
     */
    public record Temper(
            int motility, @Unit("m") double sand, Set<SocialForm> forms, Set<Trouble> troubles, SpeciesSource source) {
        public Temper {
            forms = Set.copyOf(forms);
            troubles = Set.copyOf(troubles);
        }
    }

    /** Whether it is what something eats. */
    public boolean isPreyOf(Prey prey) {
        return switch (prey) {
            case SHRIMP -> group == Group.SHRIMP;
            case SMALL_SHRIMP -> group == Group.SHRIMP && extent != null && extent.most() <= SMALL;
            case CRABS -> group == Group.CRAB;
            case SNAILS -> group == Group.SNAIL;
            case URCHINS -> group == Group.URCHIN;
            case STARS -> group == Group.STAR;
            case WORMS, FEATHER_WORMS -> group == Group.WORM;
            case CLAMS -> group == Group.CLAM;
            case STONY_POLYPS -> group == Group.SPS || group == Group.LPS;
            case LARGE_POLYPS -> group == Group.LPS;
            case SMALL_POLYPS -> group == Group.SPS;
            case SOFT_CORALS -> group == Group.SOFT || group == Group.GORGONIAN;
            case ZOANTHIDS -> group == Group.ZOANTHID;
            case ANEMONES -> group == Group.ANEMONE;
            case FISH, SMALL_FISH, SPONGES, MICROFAUNA, PODS, ALGAE_FILM -> false;
        };
    }
}
