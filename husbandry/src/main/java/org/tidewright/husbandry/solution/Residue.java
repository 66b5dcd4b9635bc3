package org.tidewright.husbandry.solution;

import java.util.Collections;
import java.util.EnumMap;
import java.util.Map;
import org.tidewright.plan.model.Salt;
import org.tidewright.seawater.ions.MajorIon;
import org.tidewright.seawater.range.Bounds;
import org.tidewright.seawater.unit.Unit;

/**
 * What stays in the water of salts that were dosed, once calcification has taken all their alkalinity and the calcium and
 * magnesium that go with it. Amounts count moles, or moles per time or volume, whatever the doses were counted in.
 *
 * @param ions moles of each; below 0 where calcification took more than was dosed
 */
public record Residue(Map<MajorIon, @Unit("*") Double> ions) {
    public Residue {
        ions = Collections.unmodifiableMap(new EnumMap<>(ions));
    }

    /**
     * From doses. Alkalinity in the water is taken to stay where it is, so that all of what comes is laid down.
     *
     * <pre>Ca = Ca_dosed - (1 - f) A/2, Mg = Mg_dosed - f A/2; Na, K, Cl, SO4 as dosed</pre>
     *
     * @param dosed moles of each salt
     * @param magnesiumShare f, moles of magnesium among those of calcium and magnesium laid down
     * @source stoichiometry of (Ca, Mg)CO3
     */
    public static Residue of(Map<Salt, Double> dosed, @Unit("1") double magnesiumShare) {
        Bounds.within(magnesiumShare, "1", 0, 0.5, "magnesium's share of the skeleton", "is it in percent?");
        double sodium = 0;
        double potassium = 0;
        double calcium = 0;
        double magnesium = 0;
        double chloride = 0;
        double sulfate = 0;
        for (Map.Entry<Salt, Double> dose : new EnumMap<>(dosed).entrySet()) {
            Salt salt = dose.getKey();
            double amount = Bounds.notNegative(dose.getValue(), "mol", "dose of " + salt.words());
            if (salt.ammonia() + salt.nitrate() + salt.phosphate() + salt.organicCarbon() > 0) {
                throw new IllegalArgumentException(
                        salt.words() + " is eaten, not left behind; leave it out of the balance of sea salt");
            }
            double laidDown = salt.alkalinity() / 2;
            sodium += amount * salt.sodium();
            potassium += amount * salt.potassium();
            calcium += amount * (salt.calcium() - (1 - magnesiumShare) * laidDown);
            magnesium += amount * (salt.magnesium() - magnesiumShare * laidDown);
            chloride += amount * salt.chloride();
            sulfate += amount * salt.sulfate();
        }
        Map<MajorIon, Double> ions = new EnumMap<>(MajorIon.class);
        ions.put(MajorIon.SODIUM, sodium);
        ions.put(MajorIon.POTASSIUM, potassium);
        ions.put(MajorIon.CALCIUM, calcium);
        ions.put(MajorIon.MAGNESIUM, magnesium);
        ions.put(MajorIon.CHLORIDE, chloride);
        ions.put(MajorIon.SULFATE, sulfate);
        return new Residue(ions);
    }

    /** So many times as much of each; a residue by the day becomes one by the second with 1/86400. */
    public Residue times(@Unit("*") double factor) {
        Map<MajorIon, Double> product = new EnumMap<>(ions);
        product.replaceAll((ion, amount) -> factor * amount);
        return new Residue(product);
    }

    /** Of an ion; 0 for those that no salt brings. */
    @Unit("*")
    public double amount(MajorIon ion) {
        return ions.getOrDefault(ion, 0.0);
    }

    /** Mass of all of them, in kg for moles. */
    @Unit("*")
    public double mass() {
        return ions.entrySet().stream()
                .mapToDouble(ion -> ion.getValue() * ion.getKey().molarMass())
                .sum();
    }

    /** Sum of their charges, which is 0 but for rounding: what was neutral stays so. */
    @Unit("*")
    public double charge() {
        return ions.entrySet().stream()
                .mapToDouble(ion -> ion.getValue() * ion.getKey().charge())
                .sum();
    }

    /** Share of the mass, all taken as positive, that is neither sodium nor chloride. */
    @Unit("1")
    public double besidesTableSalt() {
        double all = 0;
        double others = 0;
        for (Map.Entry<MajorIon, Double> ion : ions.entrySet()) {
            double mass = Math.abs(ion.getValue()) * ion.getKey().molarMass();
            all += mass;
            others += ion.getKey() == MajorIon.SODIUM || ion.getKey() == MajorIon.CHLORIDE ? 0 : mass;
        }
        return all == 0 ? 0 : others / all;
    }
}
