package org.tidewright.husbandry.solution;

import org.tidewright.plan.model.Salt;
import org.tidewright.seawater.range.Bounds;
import org.tidewright.seawater.unit.Unit;

/**
 * A salt as it comes out of its bag: never wholly its formula, for it is impure or has taken up water.
 *
 * @param purity mass of the formula in a mass of it; above 1 where a hydrate holds less water than its formula says
 * @param standardError of the purity
 */
public record SoldSalt(
        Salt salt, @Unit("1") double purity, @Unit("1") double standardError) {
    /** Least and most that can be meant: half of it something else, or a heptahydrate that has lost all its water. */
    private static final double LEAST = 0.3;

    private static final double MOST = 2.1;

    public SoldSalt {
        Bounds.within(purity, "1", LEAST, MOST, "purity of the salt", "is it in percent?");
        Bounds.within(standardError, "1", 0, 0.5, "standard error of the purity", "is it in percent?");
    }

    /** The formula and nothing else. */
    public static SoldSalt pure(Salt salt) {
        return new SoldSalt(salt, 1, 0);
    }

    /**
     * By what its label says of the salt without water: "74–78 % CaCl2" of the dihydrate.
     *
     * @param share mass of the salt without water in a mass of what is sold
     * @param standardError of the share
     */
    public static SoldSalt ofDryShare(Salt salt, @Unit("1") double share, @Unit("1") double standardError) {
        double perShare = salt.molarMass() / salt.dryMolarMass();
        return new SoldSalt(salt, share * perShare, standardError * perShare);
    }

    /**
     * Of food grade, kept closed, where the label says nothing.
     *
     * @source common practice; calcium chloride "dihydrate" holds 72 to 78 % of CaCl2, the formula 75.5 %
     */
    public static SoldSalt usual(Salt salt) {
        return switch (salt) {
            case CALCIUM_CHLORIDE -> ofDryShare(salt, 0.75, 0.018);
            case CALCIUM_CHLORIDE_ANHYDROUS -> new SoldSalt(salt, 0.955, 0.01);
            case MAGNESIUM_CHLORIDE -> new SoldSalt(salt, 0.99, 0.015);
            case MAGNESIUM_SULFATE -> new SoldSalt(salt, 0.995, 0.01);
            case SODIUM_CARBONATE -> new SoldSalt(salt, 0.99, 0.01);
            case SODIUM_HYDROXIDE -> new SoldSalt(salt, 0.97, 0.01);
            case CALCIUM_HYDROXIDE -> new SoldSalt(salt, 0.95, 0.02);
            default -> new SoldSalt(salt, 0.99, 0.005);
        };
    }

    /** Mass that holds so many moles of the formula. */
    @Unit("kg")
    public double massHolding(@Unit("mol") double amount) {
        Bounds.notNegative(amount, "mol", "amount of the salt");
        return amount * salt.molarMass() / purity;
    }

    /** Moles of the formula in a mass, the inverse of {@link #massHolding}. */
    @Unit("mol")
    public double amountIn(@Unit("kg") double mass) {
        Bounds.notNegative(mass, "kg", "mass of the salt");
        return purity * mass / salt.molarMass();
    }

    /** As a keeper calls it. */
    public String words() {
        return salt.words();
    }
}
