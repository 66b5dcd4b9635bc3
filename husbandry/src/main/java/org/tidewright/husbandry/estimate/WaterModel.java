package org.tidewright.husbandry.estimate;

import static org.tidewright.plan.method.WaterQuantity.ALKALINITY;
import static org.tidewright.plan.method.WaterQuantity.CALCIUM;
import static org.tidewright.plan.method.WaterQuantity.MAGNESIUM;
import static org.tidewright.plan.method.WaterQuantity.NITRATE;
import static org.tidewright.plan.method.WaterQuantity.SALINITY;

import java.util.ArrayList;
import java.util.Collection;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.tidewright.numerics.filter.Belief;
import org.tidewright.numerics.filter.Measurement;
import org.tidewright.numerics.filter.Passage;
import org.tidewright.numerics.filter.Stretch;
import org.tidewright.numerics.filter.StructuralModel;
import org.tidewright.plan.method.TestMethod;
import org.tidewright.plan.method.WaterQuantity;

/**
 * How levels of a water move and are read: the states of some quantities that share causes, and what drives and shakes them.
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
 * <p>u0, p and v walk; r and m stay. Any other quantity has a level and a use of its own, and may have a daily swing and a
 * restless part. A reading is the level at its time of day, and the bias of its method.
 */
final class WaterModel {
    /** Quantities that calcification, nitrate and salinity tie together. */
    static final Set<WaterQuantity> MINERALS = EnumSet.of(ALKALINITY, CALCIUM, MAGNESIUM, NITRATE, SALINITY);

    private static final double CALCIUM_MASS = 40.078e-3;
    private static final double MAGNESIUM_MASS = 24.305e-3;
    private static final double NITRATE_MASS = 62.0049e-3;

    /** Something moved changes what is used by so much, one standard error; the handbook, section 3.2. */
    private static final double UPSET = 0.15;

    /** And a use of which no usual size is known, by so much of its error at the start; a guess. */
    private static final double UPSET_OF_ERROR = 0.5;

    private static final String CALCIFICATION = "calcification";
    private static final String NITRATE_PRODUCTION = "nitrate production";
    private static final String DILUTION = "dilution";
    private static final String PROBE = "change";

    private final Inputs inputs;
    private final Set<WaterQuantity> quantities;
    private final List<TestMethod> methods;
    private final Map<String, Integer> states;
    private final double[][] drives;
    private final StructuralModel structure;
    private final List<Noise> noises = new ArrayList<>();
    private final Belief start;
    private final double reaction;

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
     * The model of some quantities.
     *
     * @param methods by which they are read, or will be
     * @param reaction k, by how much calcification rises for each unit of alkalinity, 1/d
     * @param probed one whose rate is to change by an amount nothing is known of, see {@link Foresight}; else null
     */
    WaterModel(
            Inputs inputs,
            Set<WaterQuantity> quantities,
            Collection<TestMethod> methods,
            double reaction,
            @Nullable WaterQuantity probed) {
        this.inputs = inputs;
        this.reaction = quantities.contains(ALKALINITY) ? reaction : 0;
        this.quantities = EnumSet.copyOf(quantities);
        this.methods = List.copyOf(methods);
        StateDraft draft = new StateDraft();
        for (WaterQuantity quantity : this.quantities) {
            draft.add(level(quantity), Priors.of(quantity).usualLevel());
        }
        if (MINERALS.containsAll(quantities)) {
            minerals(draft);
        } else {
            this.quantities.forEach(quantity -> alone(draft, quantity));
        }
        methods.forEach(method -> {
            if (!draft.has(bias(method))) {
                draft.add(bias(method), new Known(0, 1));
            }
        });
        for (Solution solution : inputs.solutions()) {
            if (this.quantities.stream().anyMatch(quantity -> solution.effectOn(quantity) != 0)) {
                draft.add(strength(solution), new Known(0, solution.strengthError()));
            }
        }
        drives = draft.drives();
        if (probed != null) {
            draft.add(PROBE, new Known(0, 1e3 * expected(probed).use().standardError()));
            draft.drive(level(probed), PROBE, 1);
        }
        states = draft.states();
        structure = draft.structure();
        start = draft.start();
        if (this.reaction > 0) {
            tie(start, index(level(ALKALINITY)), index(CALCIFICATION), this.reaction);
        }
    }

    /** What is known of u at the start is known of u = u0 + k A whatever A is. */
    private static void tie(Belief start, int level, int rest, double reaction) {
        double ofLevel = start.covariance()[level][level];
        start.covariance()[level][rest] = -reaction * ofLevel;
        start.covariance()[rest][level] = -reaction * ofLevel;
        start.covariance()[rest][rest] += reaction * reaction * ofLevel;
    }

    // ── states ──

    private static String level(WaterQuantity quantity) {
        return quantity.key();
    }

    private static String use(WaterQuantity quantity) {
        return "use of " + quantity.key();
    }

    private static String bias(TestMethod method) {
        return "bias of " + method.key() + " for " + method.quantity().key();
    }

    private static String strength(Solution solution) {
        return "strength of " + solution.name();
    }

    private Inputs.Expected expected(WaterQuantity quantity) {
        return expected(inputs, quantity);
    }

    /** Without any reading; what is usual where the inputs do not say. */
    static Inputs.Expected expected(Inputs inputs, WaterQuantity quantity) {
        Inputs.Expected expected = inputs.expected().get(quantity);
        if (expected == null) {
            return new Inputs.Expected(null, new Known(0, Priors.of(quantity).useError()));
        }
        return expected;
    }

    /** As stated, else what is usual. */
    static double level(Inputs inputs, WaterQuantity quantity) {
        Known stated = expected(inputs, quantity).stated();
        return stated == null ? Priors.of(quantity).usualLevel().value() : stated.value();
    }

    private void minerals(StateDraft draft) {
        double f = inputs.magnesiumShare();
        if (draft.has(level(ALKALINITY)) || draft.has(level(CALCIUM))) {
            Known use = expected(ALKALINITY).use();
            double followed = reaction * Priors.of(ALKALINITY).usualLevel().value();
            Map<WaterQuantity, Double> taken = Map.of(
                    ALKALINITY, -1.0,
                    CALCIUM, -(1 - f) / 2 * CALCIUM_MASS,
                    MAGNESIUM, -f / 2 * MAGNESIUM_MASS);
            use(draft, ALKALINITY, CALCIFICATION, new Known(use.value() - followed, use.standardError()), taken);
            taken.forEach((quantity, amount) -> draft.drive(level(quantity), level(ALKALINITY), amount * reaction));
        }
        for (WaterQuantity quantity : List.of(CALCIUM, MAGNESIUM)) {
            if (draft.has(level(quantity))) {
                draft.add(use(quantity), expected(quantity).use());
                draft.drive(level(quantity), use(quantity), -1);
            }
        }
        if (draft.has(level(NITRATE))) {
            Known use = expected(NITRATE).use();
            use(
                    draft,
                    NITRATE,
                    NITRATE_PRODUCTION,
                    new Known(-use.value(), use.standardError()),
                    Map.of(NITRATE, 1.0, ALKALINITY, -1 / NITRATE_MASS));
        }
        for (WaterQuantity quantity : EnumSet.complementOf(EnumSet.of(SALINITY))) {
            if (draft.has(level(quantity))) {
                shakeLevel(draft, quantity, Map.of(level(quantity), 1.0));
            }
        }
        if (draft.has(level(SALINITY))) {
            Map<WaterQuantity, Double> diluted = new EnumMap<>(WaterQuantity.class);
            Map<String, Double> alike = new HashMap<>();
            for (WaterQuantity quantity : quantities) {
                double share = level(inputs, quantity) / level(inputs, SALINITY);
                diluted.put(quantity, -share);
                alike.put(level(quantity), share);
            }
            shakeLevel(draft, SALINITY, alike);
            use(draft, SALINITY, DILUTION, expected(SALINITY).use(), diluted);
        }
    }

    private void alone(StateDraft draft, WaterQuantity quantity) {
        Priors priors = Priors.of(quantity);
        use(draft, quantity, use(quantity), expected(quantity).use(), Map.of(quantity, -1.0));
        shakeLevel(draft, quantity, Map.of(level(quantity), 1.0));
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

    private static String swing(WaterQuantity quantity, boolean cosine) {
        return (cosine ? "noon and midnight swing of " : "morning and evening swing of ") + quantity.key();
    }

    private static String restless(WaterQuantity quantity) {
        return "restless part of " + quantity.key();
    }

    private Priors priors(WaterQuantity quantity) {
        Priors priors = Priors.of(quantity);
        return quantity == ALKALINITY
                ? priors.ofAlkalinityUsed(expected(ALKALINITY).use().value())
                : priors;
    }

    /** What walks, or what stays with a part beside it that comes and goes. */
    private void use(
            StateDraft draft, WaterQuantity quantity, String use, Known known, Map<WaterQuantity, Double> moves) {
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

    private void shakeLevel(StateDraft draft, WaterQuantity quantity, Map<String, Double> direction) {
        noises.add(new Noise(quantity, Noise.Part.LEVEL, priors(quantity).levelWalk()));
        draft.shake(direction);
    }

    Inputs inputs() {
        return inputs;
    }

    double reaction() {
        return reaction;
    }

    Set<WaterQuantity> quantities() {
        return quantities;
    }

    List<Noise> noises() {
        return noises;
    }

    StructuralModel structure() {
        return structure;
    }

    /** Whether a solution moves one of the levels. */
    boolean doses(Solution solution) {
        return states.containsKey(strength(solution));
    }

    /** Whether a method's bias is one of the states. */
    boolean reads(TestMethod method) {
        return states.containsKey(bias(method));
    }

    /** What the plan states of the levels: readings by the keeper's first kit, of an unknown day. */
    List<Measurement> stated() {
        List<Measurement> measurements = new ArrayList<>();
        for (WaterQuantity quantity : quantities) {
            Known stated = expected(quantity).stated();
            if (stated != null) {
                double[] row = trendRow(quantity);
                methods.stream()
                        .filter(method -> method.quantity() == quantity)
                        .findFirst()
                        .ifPresent(method -> row[index(bias(method))] = method.biasError(stated.value()));
                double error = stated.standardError();
                measurements.add(new Measurement(stated.value(), row, error * error));
            }
        }
        return measurements;
    }

    /** What is known before the first reading and without the plan. */
    Belief start() {
        return start;
    }

    // ── what is read off the states ──

    /** The level at a time of day. */
    double[] levelRow(WaterQuantity quantity, double time) {
        double[] row = trendRow(quantity);
        double ahead = inputs.calcifying().ahead(time);
        for (String calcifying : List.of(CALCIFICATION, level(ALKALINITY))) {
            Integer state = states.get(calcifying);
            if (state != null) {
                row[state] += drives[index(level(quantity))][state] * ahead;
            }
        }
        if (states.containsKey(swing(quantity, true))) {
            row[index(swing(quantity, true))] = Math.cos(2 * Math.PI * time);
            row[index(swing(quantity, false))] = Math.sin(2 * Math.PI * time);
        }
        if (states.containsKey(restless(quantity))) {
            row[index(restless(quantity))] = 1;
        }
        return row;
    }

    /** The level over the day. */
    double[] trendRow(WaterQuantity quantity) {
        double[] row = new double[states.size()];
        row[levelState(quantity)] = 1;
        return row;
    }

    int levelState(WaterQuantity quantity) {
        return index(level(quantity));
    }

    /** What the system uses a day. */
    double[] useRow(WaterQuantity quantity) {
        double[] row = new double[states.size()];
        double[] driven = drives[index(level(quantity))];
        for (int i = 0; i < driven.length; i++) {
            row[i] = -driven[i];
        }
        return row;
    }

    /** The bias of a method at a level. */
    double[] biasRow(TestMethod method, double level) {
        double[] row = new double[states.size()];
        row[index(bias(method))] = method.biasError(level);
        return row;
    }

    /** The change that nothing is known of. */
    double[] probeRow() {
        double[] row = new double[states.size()];
        row[index(PROBE)] = 1;
        return row;
    }

    /**
     * A reading.
     *
     * @param level at which its method errs as much as it did
     */
    Measurement measure(TestMethod method, double time, double value, double level) {
        double[] row = levelRow(method.quantity(), time);
        row[index(bias(method))] = method.biasError(level);
        double error = method.repeatability(level);
        return new Measurement(value, row, error * error);
    }

    /** What a method showed of a standard. */
    Measurement measure(Inputs.Check check) {
        double error = check.method().repeatability(check.standard().value());
        double ofStandard = check.standard().standardError();
        return new Measurement(
                check.shown() - check.standard().value(),
                biasRow(check.method(), check.standard().value()),
                error * error + ofStandard * ofStandard);
    }

    // ── how the states move ──

    /** From one time to another, with what was dosed; without noise, which {@link Stretch#shake} fills in. */
    Passage passage(Stretch stretch, double from) {
        double[][] matrix = stretch.matrix();
        double[] input = new double[matrix.length];
        for (Solution solution : inputs.solutions()) {
            Integer strength = states.get(strength(solution));
            double amount = strength == null ? 0 : solution.amount(from, from + stretch.time());
            if (strength != null && amount != 0) {
                double[] rises = new double[states.size()];
                for (WaterQuantity quantity : quantities) {
                    rises[index(level(quantity))] = amount * solution.effectOn(quantity);
                }
                double[] risen = stretch.evenly(rises);
                for (int i = 0; i < risen.length; i++) {
                    input[i] += risen[i];
                    matrix[i][strength] += risen[i];
                }
            }
        }
        return new Passage(matrix, input, new double[matrix.length][matrix.length]);
    }

    /** Water changed: levels and what is not known of them shrink alike, and the new water brings its own doubt. */
    Passage renewal(Renewal renewal) {
        double[][] matrix = structure.stretch(0).matrix();
        double[] input = new double[matrix.length];
        double[][] noise = new double[matrix.length][matrix.length];
        double share = renewal.share();
        for (WaterQuantity quantity : quantities) {
            Known water = renewal.newWater().get(quantity);
            if (water != null) {
                int level = index(level(quantity));
                matrix[level][level] = 1 - share;
                input[level] = share * water.value();
                noise[level][level] = Math.pow(share * water.standardError(), 2);
            }
        }
        return new Passage(matrix, input, noise);
    }

    /** Something moved: what is used may have changed at once. */
    Passage upset() {
        Passage passage = structure.stretch(0).passage();
        loosen(passage, CALCIFICATION, UPSET * expected(ALKALINITY).use().value());
        loosen(
                passage,
                NITRATE_PRODUCTION,
                UPSET_OF_ERROR * expected(NITRATE).use().standardError());
        for (WaterQuantity quantity : EnumSet.complementOf(EnumSet.copyOf(MINERALS))) {
            loosen(
                    passage,
                    use(quantity),
                    UPSET_OF_ERROR * expected(quantity).use().standardError());
        }
        return passage;
    }

    private void loosen(Passage passage, String state, double error) {
        Integer index = states.get(state);
        if (index != null) {
            passage.noise()[index][index] += error * error;
        }
    }

    /** What another model of the same quantities believed, where it had the same states; the start's for the others. */
    Belief taken(WaterModel other, Belief belief) {
        Belief taken = start();
        states.forEach((name, state) -> {
            Integer theirs = other.states.get(name);
            if (theirs != null) {
                taken.mean()[state] = belief.mean(theirs);
                states.forEach((across, column) -> {
                    Integer theirColumn = other.states.get(across);
                    if (theirColumn != null) {
                        taken.covariance()[state][column] = belief.covariance()[theirs][theirColumn];
                    }
                });
            }
        });
        return taken;
    }

    private int index(String state) {
        Integer index = states.get(state);
        if (index == null) {
            throw new IllegalArgumentException("there is no " + state + " in a model of " + quantities);
        }
        return index;
    }
}
