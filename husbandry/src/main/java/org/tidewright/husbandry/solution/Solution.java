package org.tidewright.husbandry.solution;

import java.util.Collections;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.Map;
import java.util.Set;
import java.util.function.ToDoubleFunction;
import org.tidewright.plan.model.Salt;
import org.tidewright.seawater.range.Bounds;
import org.tidewright.seawater.unit.Unit;

/**
 * What is dissolved in a volume of a solution.
 *
 * @param content moles of each salt per volume of the solution, filled up to the mark
 */
public record Solution(Map<Salt, @Unit("mol/m^3") Double> content) {
    /** Saturated with gypsum at 25 degC: 0.205 % by mass of CaSO4, CRC Handbook, 136.14 g/mol. */
    private static final double GYPSUM = 15.1; // mol/m^3

    /** Why a solution cannot be kept in one bottle. */
    public enum Clash {
        /** Chalk falls. */
        CALCIUM_WITH_ALKALINITY,
        /** Magnesium carbonate or hydroxide falls. */
        MAGNESIUM_WITH_ALKALINITY,
        /** Gypsum falls. */
        CALCIUM_WITH_SULFATE
    }

    /** Keeps the salts in one order, so that sums over them are the same to the last bit, and none of which there is 0. */
    public Solution {
        Map<Salt, Double> kept = new EnumMap<>(Salt.class);
        content.forEach((salt, amount) -> {
            if (Bounds.notNegative(amount, "mol/m^3", "amount of " + salt.words()) > 0) {
                kept.put(salt, amount);
            }
        });
        if (kept.isEmpty()) {
            throw new IllegalArgumentException("amounts of all salts are 0; a solution must hold at least one salt");
        }
        content = Collections.unmodifiableMap(kept);
    }

    /** Of one salt. */
    public static Solution of(Salt salt, @Unit("mol/m^3") double amount) {
        return new Solution(Map.of(salt, amount));
    }

    /** Of one salt, by the mass of its formula, water of crystallisation included. */
    public static Solution ofMass(Salt salt, @Unit("kg/m^3") double mass) {
        return of(salt, mass / salt.molarMass());
    }

    /** This with more dissolved in the same volume. */
    public Solution and(Solution other) {
        Map<Salt, Double> sum = new EnumMap<>(content);
        other.content.forEach((salt, amount) -> sum.merge(salt, amount, Double::sum));
        return new Solution(sum);
    }

    /** The same salts, so many times as much of each. */
    public Solution times(@Unit("1") double factor) {
        Map<Salt, Double> product = new EnumMap<>(content);
        product.replaceAll((salt, amount) -> factor * amount);
        return new Solution(product);
    }

    /** Moles of a salt per volume; 0 where it holds none. */
    @Unit("mol/m^3")
    public double amount(Salt salt) {
        return content.getOrDefault(salt, 0.0);
    }

    /** Sum over its salts of what a mole of each brings, per volume. */
    @Unit("mol/m^3")
    public double total(ToDoubleFunction<Salt> perMole) {
        return content.entrySet().stream()
                .mapToDouble(part -> part.getValue() * perMole.applyAsDouble(part.getKey()))
                .sum();
    }

    /** Mass of its salts without water of crystallisation, per volume. */
    @Unit("kg/m^3")
    public double dryMass() {
        return total(Salt::dryMolarMass);
    }

    /** Charge of its ions that is left for carbonate, bicarbonate and hydroxide: its alkalinity, by another way. */
    @Unit("mol/m^3")
    public double charge() {
        return total(salt -> salt.sodium()
                + salt.potassium()
                + 2 * salt.calcium()
                + 2 * salt.magnesium()
                + salt.ammonia()
                - salt.chloride()
                - 2 * salt.sulfate()
                - salt.nitrate()
                - salt.phosphate()
                - salt.organicCarbon() / 2);
    }

    /** What would fall out of it; empty where all stays dissolved as far as these go. */
    public Set<Clash> clashes() {
        Set<Clash> clashes = EnumSet.noneOf(Clash.class);
        double alkalinity = total(salt -> Math.max(0, salt.alkalinity()));
        double calcium = total(Salt::calcium);
        boolean onlyLime = content.size() == 1 && content.containsKey(Salt.CALCIUM_HYDROXIDE);
        if (alkalinity > 0 && calcium > 0 && !onlyLime) {
            clashes.add(Clash.CALCIUM_WITH_ALKALINITY);
        }
        if (alkalinity > 0 && total(Salt::magnesium) > 0) {
            clashes.add(Clash.MAGNESIUM_WITH_ALKALINITY);
        }
        if (calcium * total(Salt::sulfate) > GYPSUM * GYPSUM) {
            clashes.add(Clash.CALCIUM_WITH_SULFATE);
        }
        return clashes;
    }
}
