package org.tidewright.twin.law.biota;

import org.tidewright.seawater.range.Bounds;
import org.tidewright.seawater.unit.Unit;
import org.tidewright.twin.law.gas.Q10;
import org.tidewright.twin.law.nutrient.Spread;

/**
 * What a fish lives on when it gets too little: first mostly its fat, then more and more its flesh, until it is too thin to
 * live. Fat is the carbon of the flesh beyond what protein holds; how thin a fish is shows in its flesh against its bones,
 * which do not shrink.
 */
public final class Hunger {
    /** Carbon to nitrogen of flesh without fat: protein of 53 % carbon and 16 % nitrogen is 3.9, of 17 % 3.6; from memory. */
    @Unit("1")
    public static final double LEAN_CARBON = 3.8;

    /** Share of the phosphorus of an ordinary fish that is bone; "half or more", see {@link BodyComposition#PHOSPHORUS}. */
    @Unit("1")
    public static final double BONE = 0.5;

    /**
     * Condition, flesh of a length over that of an ordinary fish, at which starving fish die by the tenth a day. Trout that
     * had lost a third of their mass lived and grew again (Weatherley and Gill 1981, J. Fish Biol. 18, 195); cod that
     * starved to death had half the condition factor of fed ones (Dutil and Lambert 2000, Can. J. Fish. Aquat. Sci. 57,
     * 826; that number from memory).
     */
    @Unit("1")
    public static final Spread LETHAL = new Spread(0.4, 0.5, 0.62);

    /** Twice the rate at the lethal condition; an estimate. */
    @Unit("1/s")
    private static final double GREATEST_DEATH_RATE = 0.2 / 86_400;

    /** Less nitrogen than this is no fish. */
    private static final double SPECK = 1e-15; // mol

    private static final double MOST_FAT = 10;

    private static final double REFERENCE = 25; // degC

    private Hunger() {}

    /**
     * Fat of flesh, over that of an ordinary fish.
     *
     * <pre>x = (C/N - 3.8) / (C/N of an ordinary fish - 3.8), not below 0</pre>
     *
     * @param carbon C of the flesh
     * @param nitrogen N of the flesh
     * @return 1 for an ordinary fish, 0 without fat or without flesh
     * @source definition; the ordinary fish is that of {@link BodyComposition}
     * @validity carbohydrate is left out, a hundredth of a fish
     */
    @Unit("1")
    public static double fat(@Unit("mol") double carbon, @Unit("mol") double nitrogen) {
        Bounds.finite(carbon, "mol", "carbon of the flesh");
        Bounds.finite(nitrogen, "mol", "nitrogen of the flesh");
        if (nitrogen < SPECK) {
            return 0;
        }
        double ordinary = BodyComposition.CARBON / BodyComposition.NITROGEN;
        return Math.min(MOST_FAT, Math.max(0, carbon / nitrogen - LEAN_CARBON) / (ordinary - LEAN_CARBON));
    }

    /**
     * Share of what a hungry fish burns that is flesh, the rest is fat.
     *
     * <pre>p = 1 / (1 + (1/p0 - 1) x)</pre>
     *
     * @param fat x, of {@link #fat}
     * @param ordinary p0, the share in a fish of ordinary fat, above 0
     * @return share of carbon
     * @source Caloin 2004, Am. J. Physiol. Endocrinol. Metab. 287, E790: fat is used against protein in proportion to how
     *     much of it there is
     * @validity a model of the fasting of vertebrates, not made for fish
     */
    @Unit("1")
    public static double proteinShare(@Unit("1") double fat, @Unit("1") double ordinary) {
        Bounds.within(fat, "1", 0, 1000, "fat");
        Bounds.within(ordinary, "1", 1e-6, 1, "share of protein");
        return 1 / (1 + (1 / ordinary - 1) * fat);
    }

    /**
     * Flesh over that of an ordinary fish of the same bones.
     *
     * <pre>c = b N n_P / (n_N P - (1 - b) N n_P), b the share of bone in the phosphorus n_P of an ordinary fish</pre>
     *
     * @param nitrogen N of the fish
     * @param phosphorus P of the fish
     * @return 1 for an ordinary fish, less for a thin one; at most 1, and 1 without any fish
     * @source definition: bone keeps its phosphorus, soft parts hold theirs in proportion to nitrogen
     * @validity bone that starving fish draw on is left out
     */
    @Unit("1")
    public static double condition(@Unit("mol") double nitrogen, @Unit("mol") double phosphorus) {
        Bounds.finite(nitrogen, "mol", "nitrogen of the fish");
        Bounds.finite(phosphorus, "mol", "phosphorus of the fish");
        if (nitrogen < SPECK) {
            return 1;
        }
        double ordinary = nitrogen * BodyComposition.PHOSPHORUS / BodyComposition.NITROGEN;
        double bone = phosphorus - (1 - BONE) * ordinary;
        return bone <= BONE * ordinary ? 1 : BONE * ordinary / bone;
    }

    /**
     * How fast starved fish die.
     *
     * <pre>m = 0.2 per day h/(1 + h) 2.4^((T - 25 degC)/10 K), h = ((1 - c)/(1 - c_d))^8</pre>
     *
     * @param condition c, of {@link #condition}
     * @param lethal c_d, {@link #LETHAL}
     * @param temperature T, ITS-90
     * @return share of the fish per time
     * @source form an estimate; warmth as their breath
     * @validity nothing but hunger; an order of magnitude, surer of the day than of the rate
     */
    @Unit("1/s")
    public static double deathRate(
            @Unit("1") double condition, @Unit("1") double lethal, @Unit("degC") double temperature) {
        Bounds.within(condition, "1", 0, 1, "condition");
        Bounds.within(lethal, "1", 0, 0.99, "lethal condition");
        // To the eighth: hardly any die at two thirds of their flesh and few outlive the loss of half; an estimate.
        double lost = (1 - condition) / (1 - lethal);
        double fourth = lost * lost * lost * lost;
        double thin = fourth * fourth;
        return GREATEST_DEATH_RATE
                * (thin / (1 + thin))
                * Q10.factor(Q10.WITHIN_A_FISH_SPECIES, temperature, REFERENCE);
    }
}
