package org.tidewright.husbandry.estimate;

import static org.tidewright.plan.method.WaterQuantity.ALKALINITY;
import static org.tidewright.plan.method.WaterQuantity.CALCIUM;
import static org.tidewright.plan.method.WaterQuantity.MAGNESIUM;
import static org.tidewright.plan.method.WaterQuantity.NITRATE;
import static org.tidewright.plan.method.WaterQuantity.SALINITY;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.tidewright.plan.method.TestMethod;
import org.tidewright.plan.method.WaterQuantity;

/**
 * The states of some quantities that share causes: what is known of them at the start, and what drives and shakes them.
 *
 * <pre>
 * u   = u0 + k A                                      net calcification: it follows the alkalinity it uses
 * dA  = (doses - u - p/M_NO3 - v A/S) dt + noise      p net nitrate production, v dilution
 * dCa = (doses - u (1-f)/2 M_Ca - r - v Ca/S) dt + …  r a small use of calcium apart from skeletons
 * dMg = (doses - u f/2 M_Mg - m - v Mg/S) dt + …      f share of magnesium in them, m the like of magnesium
 * dN  = (doses + p - v N/S) dt + …
 * dS  = (doses - v) dt + noise, which carries A, Ca, Mg and N along in proportion
 * </pre>
 *
 * <p>u0 and v walk, p falls back to a constant of its own, r and m stay. Any other quantity has a level and a use that falls
 * back likewise, and may have a daily swing and a restless part.
 */
final class WaterStates {
    /** Quantities that calcification, nitrate and salinity tie together. */
    static final Set<WaterQuantity> MINERALS = EnumSet.of(ALKALINITY, CALCIUM, MAGNESIUM, NITRATE, SALINITY);

    static final String CALCIFICATION = "calcification";
    static final String NITRATE_PRODUCTION = "nitrate production";
    static final String DILUTION = "dilution";

    private static final double MAGNESIUM_MASS = 24.305e-3;
    private static final double NITRATE_MASS = 62.0049e-3;

    private final Inputs inputs;
    private final double reaction;
    private final StateDraft draft = new StateDraft();
    private final List<Noise> noises = new ArrayList<>();

    /** What shakes the states; its size is to be learnt. */
    record Noise(WaterQuantity quantity, Part part, Priors.Walk prior) {
        /** Of what it is the noise. */
        enum Part {
            LEVEL("level"),
            USE("use a day"),
            RESTLESS("what comes and goes within days");

            private final String words;

            Part(String words) {
                this.words = words;
            }

            String words() {
                return words;
            }
        }
    }

    /**
     * Of some quantities.
     *
     * @param kits by which they are read
     * @param reaction k, by how much calcification rises for each unit of alkalinity, 1/d
     */
    WaterStates(Inputs inputs, Set<WaterQuantity> quantities, Kits kits, double reaction) {
        this.inputs = inputs;
        this.reaction = reaction;
        for (WaterQuantity quantity : quantities) {
            draft.add(level(quantity), Priors.of(quantity).usualLevel());
        }
        if (MINERALS.containsAll(quantities)) {
            minerals(quantities);
        } else {
            quantities.forEach(this::alone);
        }
        kits.methods().forEach(method -> draft.add(bias(method), new Known(0, 1)));
        for (Solution solution : inputs.solutions()) {
            if (quantities.stream().anyMatch(quantity -> solution.effectOn(quantity) != 0)) {
                draft.add(strength(solution), new Known(0, solution.strengthError()));
            }
        }
    }

    // ── names ──

    static String level(WaterQuantity quantity) {
        return quantity.key();
    }

    static String use(WaterQuantity quantity) {
        return "use of " + quantity.key();
    }

    static String bias(TestMethod method) {
        return "bias of " + method.key() + " for " + method.quantity().key();
    }

    static String strength(Solution solution) {
        return "strength of " + solution.name();
    }

    static String swing(WaterQuantity quantity, boolean cosine) {
        return (cosine ? "noon and midnight swing of " : "morning and evening swing of ") + quantity.key();
    }

    static String restless(WaterQuantity quantity) {
        return "restless part of " + quantity.key();
    }

    StateDraft draft() {
        return draft;
    }

    List<Noise> noises() {
        return noises;
    }

    // ── causes ──

    private void minerals(Set<WaterQuantity> quantities) {
        double f = inputs.magnesiumShare();
        if (draft.has(level(ALKALINITY)) || draft.has(level(CALCIUM))) {
            Known use = inputs.use(ALKALINITY);
            double followed = reaction * Priors.of(ALKALINITY).usualLevel().value();
            Map<WaterQuantity, Double> taken = Map.of(
                    ALKALINITY, -1.0,
                    CALCIUM, -inputs.calciumForAlkalinity(),
                    MAGNESIUM, -f / 2 * MAGNESIUM_MASS);
            use(ALKALINITY, CALCIFICATION, new Known(use.value() - followed, use.standardError()), taken);
            taken.forEach((quantity, amount) -> draft.drive(level(quantity), level(ALKALINITY), amount * reaction));
        }
        for (WaterQuantity quantity : List.of(CALCIUM, MAGNESIUM)) {
            if (draft.has(level(quantity))) {
                draft.add(use(quantity), inputs.use(quantity));
                draft.drive(level(quantity), use(quantity), -1);
            }
        }
        if (draft.has(level(NITRATE))) {
            Known use = inputs.use(NITRATE);
            use(
                    NITRATE,
                    NITRATE_PRODUCTION,
                    new Known(-use.value(), use.standardError()),
                    Map.of(NITRATE, 1.0, ALKALINITY, -1 / NITRATE_MASS));
        }
        for (WaterQuantity quantity : quantities) {
            if (quantity != SALINITY) {
                shakeLevel(quantity, Map.of(level(quantity), 1.0));
            }
        }
        if (draft.has(level(SALINITY))) {
            Map<WaterQuantity, Double> diluted = new EnumMap<>(WaterQuantity.class);
            Map<String, Double> alike = new HashMap<>();
            for (WaterQuantity quantity : quantities) {
                double share = inputs.level(quantity) / inputs.level(SALINITY);
                diluted.put(quantity, -share);
                alike.put(level(quantity), share);
            }
            shakeLevel(SALINITY, alike);
            use(SALINITY, DILUTION, inputs.use(SALINITY), diluted);
        }
    }

    private void alone(WaterQuantity quantity) {
        Priors priors = Priors.of(quantity);
        use(quantity, use(quantity), inputs.use(quantity), Map.of(quantity, -1.0));
        shakeLevel(quantity, Map.of(level(quantity), 1.0));
        if (priors.swing() > 0) {
            draft.add(swing(quantity, true), new Known(0, priors.swing()));
            draft.add(swing(quantity, false), new Known(0, priors.swing()));
        }
        if (priors.restless().usual() > 0) {
            noises.add(new Noise(quantity, Noise.Part.RESTLESS, priors.restless()));
            draft.add(restless(quantity), new Known(0, priors.restless().usual()));
            draft.shakeFading(restless(quantity), Priors.FADES);
        }
    }

    /** What walks, or what stays with a part beside it that comes and goes. */
    private void use(WaterQuantity quantity, String use, Known known, Map<WaterQuantity, Double> moves) {
        Priors priors = priors(quantity);
        noises.add(new Noise(quantity, Noise.Part.USE, priors.use()));
        draft.add(use, known);
        moves.forEach((moved, amount) -> draft.drive(level(moved), use, amount));
        if (Double.isFinite(priors.useFades())) {
            String passing = "passing " + use;
            draft.add(passing, new Known(0, priors.use().usual()));
            moves.forEach((moved, amount) -> draft.drive(level(moved), passing, amount));
            draft.shakeFading(passing, priors.useFades());
        } else {
            draft.shake(Map.of(use, 1.0));
        }
    }

    private void shakeLevel(WaterQuantity quantity, Map<String, Double> direction) {
        noises.add(new Noise(quantity, Noise.Part.LEVEL, priors(quantity).levelWalk()));
        draft.shake(direction);
    }

    private Priors priors(WaterQuantity quantity) {
        Priors priors = Priors.of(quantity);
        return quantity == ALKALINITY
                ? priors.ofAlkalinityUsed(inputs.use(ALKALINITY).value())
                : priors;
    }
}
