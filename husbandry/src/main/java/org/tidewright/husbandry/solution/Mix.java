package org.tidewright.husbandry.solution;

import java.util.List;
import org.tidewright.plan.model.Salt;
import org.tidewright.seawater.range.Bounds;
import org.tidewright.seawater.unit.Unit;

/**
 * What keepers mix for, and from what. The usual strengths are common practice; both parts of a pair are counted by the
 * first.
 */
public enum Mix {
    BICARBONATE(Supply.ALKALINITY, Salt.SODIUM_BICARBONATE, 80, "alkalinity", "sodium bicarbonate"),
    CARBONATE(Supply.ALKALINITY, Salt.SODIUM_CARBONATE, 150, "alkalinity", "sodium carbonate (soda ash)"),
    LYE(Supply.ALKALINITY, Salt.SODIUM_HYDROXIDE, 40, "alkalinity", "sodium hydroxide (lye)"),
    CALCIUM(Supply.CALCIUM, Salt.CALCIUM_CHLORIDE, 70, "calcium", "calcium chloride dihydrate"),
    CALCIUM_ANHYDROUS(
            Supply.CALCIUM,
            Salt.CALCIUM_CHLORIDE_ANHYDROUS,
            50,
            "calcium",
            "calcium chloride without water (anhydrous)"),
    /** Chloride and sulfate as the sea has them. */
    MAGNESIUM(Supply.MAGNESIUM, Salt.MAGNESIUM_CHLORIDE, 200, "magnesium", "magnesium chloride and sulfate"),
    /** Saturated: its strength is what the water takes up. */
    LIMEWATER(Supply.ALKALINITY, Salt.CALCIUM_HYDROXIDE, 1.5, "alkalinity and calcium", "limewater (kalkwasser)"),
    BICARBONATE_PAIR(
            Supply.ALKALINITY,
            Salt.SODIUM_BICARBONATE,
            80,
            "alkalinity and calcium",
            "two parts: bicarbonate, calcium"),
    CARBONATE_PAIR(
            Supply.ALKALINITY, Salt.SODIUM_CARBONATE, 150, "alkalinity and calcium", "two parts: carbonate, calcium"),
    POTASSIUM(Supply.POTASSIUM, Salt.POTASSIUM_CHLORIDE, 50, "potassium", "potassium chloride"),
    NITRATE(Supply.NITRATE, Salt.SODIUM_NITRATE, 14, "nitrate", "sodium nitrate"),
    PHOSPHATE(Supply.PHOSPHATE, Salt.SODIUM_PHOSPHATE, 1.3, "phosphate", "monosodium phosphate, anhydrous");

    private final Supply supply;
    private final Salt salt;
    private final double usual;
    private final String purpose;
    private final String words;

    Mix(Supply supply, Salt salt, double usual, String purpose, String words) {
        this.supply = supply;
        this.salt = salt;
        this.usual = usual;
        this.purpose = purpose;
        this.words = words;
    }

    /** What its strength is counted in. */
    public Supply supply() {
        return supply;
    }

    /** What its strength is counted by where it is told as a mass of salt. */
    public Salt salt() {
        return salt;
    }

    /** What it is for, in words. */
    public String purpose() {
        return purpose;
    }

    /** What it is made of, in words. */
    public String words() {
        return words;
    }

    /** Whether two bottles are mixed, the second matching the first. */
    public boolean isPair() {
        return this == BICARBONATE_PAIR || this == CARBONATE_PAIR;
    }

    /** Whether one salt makes it, so that a mass of salt tells its strength. */
    public boolean isOneSalt() {
        return this != MAGNESIUM;
    }

    /** Strength that keepers usually make; common practice. */
    @Unit("mol/m^3")
    public double usual() {
        return strength(usual);
    }

    /** Strength from a mass of the pure salt in a volume, its water of crystallisation included. */
    @Unit("mol/m^3")
    public double strength(@Unit("kg/m^3") double mass) {
        return Bounds.positive(mass, "kg/m^3", "strength of the solution") / salt.molarMass() * supply.of(salt);
    }

    /**
     * The bottles of it.
     *
     * @param strength of the first; of limewater it is not looked at
     * @param magnesiumShare moles of magnesium among those of both in what is laid down; of a pair
     * @param room temperature the limewater stands at, ITS-90
     */
    public List<Solution> bottles(
            @Unit("mol/m^3") double strength, @Unit("1") double magnesiumShare, @Unit("degC") double room) {
        if (this == LIMEWATER) {
            return List.of(StandardSolutions.limewater(room));
        }
        Bounds.positive(strength, "mol/m^3", "strength of the solution");
        if (this == MAGNESIUM) {
            return List.of(StandardSolutions.magnesium(strength));
        }
        Solution first = Solution.of(salt, strength / supply.of(salt));
        return isPair() ? List.of(first, StandardSolutions.calciumMatching(first, magnesiumShare)) : List.of(first);
    }
}
