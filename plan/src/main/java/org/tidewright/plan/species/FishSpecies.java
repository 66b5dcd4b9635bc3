package org.tidewright.plan.species;

import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.tidewright.seawater.unit.Unit;

/** A species of fish. Lengths are total lengths. */
public record FishSpecies(
        Name name,
        String family,
        String region,
        Size size,
        @Nullable Growth growth,
        Weight weight,
        Gape gape,
        Diet diet,
        Fare fare,
        Temper temper,
        Company company,
        Space space,
        Danger danger,
        Warmth warmth,
        Care care,
        String notes)
        implements Species {
    /** Standard length, snout to the end of the spine, over total length; common practice. */
    private static final double STANDARD = 0.80;

    private static final double GRAM = 1e-3;
    private static final double CENTIMETRE = 1e-2;

    /**
     * How large it becomes.
     *
     * @param most that is known of adults
     * @param usual of adults in aquaria
     */
    public record Size(@Unit("m") double most, @Unit("m") double usual, SpeciesSource source) {}

    /**
     * How it grows, L(t) = L∞ − (L∞ − L0) e^(−K t).
     *
     * @param asymptote L∞
     * @param rate K
     * @source von Bertalanffy 1938, Hum. Biol. 10, 181
     */
    public record Growth(
            @Unit("m") double asymptote, @Unit("1/year") double rate, SpeciesSource source) {}

    /** Its weight, W = a L^b with W in grams and L in centimetres, as these are printed everywhere. */
    public record Weight(@Unit("*") double a, @Unit("1") double b, SpeciesSource source) {}

    /**
     * What it can swallow.
     *
     * @param bodyDepth of its own body without fins, over its length
     * @param preyDepth greatest depth of prey over its own standard length
     */
    public record Gape(
            @Unit("1") double bodyDepth, @Unit("1") double preyDepth, SpeciesSource source) {}

    /** What it lives on. */
    public enum Diet {
        HERBIVORE,
        DETRITIVORE,
        GRAZER,
        PLANKTIVORE,
        INVERTIVORE,
        OMNIVORE,
        CARNIVORE,
        PISCIVORE,
        CORALLIVORE,
        PARASITE_PICKER,
        MICROCARNIVORE
    }

    /**
     * How it treats others.
     *
     * @param temperament 1 peaceful to 5 relentless
     * @param territory 0 none to 3 the whole tank
     * @param troubles whom it goes for
     * @param look words of colour and pattern
     */
    public record Temper(
            int temperament,
            int territory,
            Set<Trouble> troubles,
            Shape shape,
            Set<String> look,
            SpeciesSource source) {
        public Temper {
            troubles = Set.copyOf(troubles);
            look = Set.copyOf(look);
        }
    }

    /** Outlines; fish take those of their own for rivals. */
    public enum Shape {
        DEEP_DISC,
        OVAL,
        TORPEDO,
        SLENDER,
        EEL,
        BOX,
        PERCHING,
        SEAHORSE
    }

    /**
     * How many of it live together.
     *
     * @param groupLeast smallest number of a harem or group; 1 where there is none
     */
    public record Company(Set<SocialForm> forms, int groupLeast, SpeciesSource source) {
        public Company {
            forms = Set.copyOf(forms);
        }
    }

    /**
     * Where it swims and sleeps.
     *
     * @param sand depth of fine sand it needs; 0 for none
     * @param jumps 0 never to 3 through every gap
     * @param digs whether it moves sand and undermines rock
     */
    public record Space(
            Swimming swimming,
            @Unit("m") double tankLength,
            @Unit("m^3") double tankVolume,
            Zone zone,
            int jumps,
            Night night,
            @Unit("m") double sand,
            boolean digs,
            SpeciesSource source) {}

    /** How much it moves. */
    public enum Swimming {
        /** Open water all day. */
        ROAMS,
        CRUISES,
        /** A few feet of rock. */
        STAYS,
        PERCHES,
        BURIES
    }

    /** Where it is by day. */
    public enum Zone {
        OPEN,
        MID,
        ROCK,
        CAVE,
        BOTTOM,
        PERCH
    }

    /** What it does by night. */
    public enum Night {
        NOTHING,
        /** Sleeps in a coat of slime. */
        COCOON,
        /** Sleeps buried. */
        SAND,
        HOLE,
        /** Hunts. */
        ACTIVE
    }

    /** Mass of one at a length. */
    public @Unit("kg") double mass(@Unit("m") double length) {
        return GRAM * weight.a() * Math.pow(length / CENTIMETRE, weight.b());
    }

    /** Depth of its body at a length. */
    public @Unit("m") double depth(@Unit("m") double length) {
        return gape.bodyDepth() * length;
    }

    /** Depth of the greatest prey it swallows at a length. */
    public @Unit("m") double swallows(@Unit("m") double length) {
        return gape.preyDepth() * STANDARD * length;
    }

    /**
     * Length some years after another. Where no growth is known it nears its usual length, halving the way each year: a guess,
     * common practice is one to three years to grow up. It never shrinks, and stops at the greatest length that is known.
     */
    public @Unit("m") double lengthAfter(@Unit("m") double length, @Unit("year") double years) {
        double target =
                growth == null ? size.usual() : Math.min(Math.max(growth.asymptote(), size.usual()), size.most());
        double rate = growth == null ? Math.log(2) : growth.rate();
        return length >= target ? length : target - (target - length) * Math.exp(-rate * years);
    }
}
