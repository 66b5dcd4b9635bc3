package org.tidewright.husbandry.estimate;

import static org.tidewright.husbandry.estimate.WaterStates.CALCIFICATION;
import static org.tidewright.husbandry.estimate.WaterStates.NITRATE_PRODUCTION;
import static org.tidewright.husbandry.estimate.WaterStates.bias;
import static org.tidewright.husbandry.estimate.WaterStates.level;
import static org.tidewright.husbandry.estimate.WaterStates.restless;
import static org.tidewright.husbandry.estimate.WaterStates.strength;
import static org.tidewright.husbandry.estimate.WaterStates.swing;
import static org.tidewright.husbandry.estimate.WaterStates.use;
import static org.tidewright.plan.method.WaterQuantity.ALKALINITY;
import static org.tidewright.plan.method.WaterQuantity.NITRATE;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.tidewright.numerics.filter.Belief;
import org.tidewright.numerics.filter.Measurement;
import org.tidewright.numerics.filter.Passage;
import org.tidewright.numerics.filter.Stretch;
import org.tidewright.numerics.filter.StructuralModel;
import org.tidewright.plan.method.TestMethod;
import org.tidewright.plan.method.WaterQuantity;

/** The linear model over {@link WaterStates}: what is read off them, and how they move. */
final class WaterModel {
    /** Something moved changes what is used by so much, one standard error; the handbook, section 3.2. */
    private static final double UPSET = 0.15;

    /** And a use of which no usual size is known, by so much of its error at the start; a guess. */
    private static final double UPSET_OF_ERROR = 0.5;

    /** Errors of the start by which a change may differ from none of which nothing is known. */
    private static final double NOTHING_KNOWN = 1e3;

    private static final String PROBE = "change";

    private final Inputs inputs;
    private final Set<WaterQuantity> quantities;
    private final Kits kits;
    private final double reaction;
    private final Map<String, Integer> states;
    private final double[][] drives;
    private final StructuralModel structure;
    private final Stretch still;
    private final List<WaterStates.Noise> noises;
    private final Belief start;

    /**
     * The model of some quantities.
     *
     * @param kits by which they are read, or will be
     * @param reaction k, by how much calcification rises for each unit of alkalinity, 1/d
     * @param probed one whose rate is to change by an amount nothing is known of, see {@link Foresight}; else null
     */
    WaterModel(
            Inputs inputs, Set<WaterQuantity> quantities, Kits kits, double reaction, @Nullable WaterQuantity probed) {
        this.inputs = inputs;
        this.quantities = EnumSet.copyOf(quantities);
        this.kits = kits;
        this.reaction = quantities.contains(ALKALINITY) ? reaction : 0;
        WaterStates assembled = new WaterStates(inputs, this.quantities, kits, this.reaction);
        StateDraft draft = assembled.draft();
        drives = draft.drives();
        if (probed != null) {
            draft.add(PROBE, new Known(0, NOTHING_KNOWN * inputs.use(probed).standardError()));
            draft.drive(level(probed), PROBE, 1);
        }
        noises = assembled.noises();
        states = draft.states();
        structure = draft.structure();
        still = structure.stretch(0);
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

    /** The same of a system that will be dosed otherwise. */
    WaterModel with(Inputs future) {
        return new WaterModel(future, quantities, kits, reaction, null);
    }

    /** The same with a quantity whose rate is to change, and with methods that were not used before. */
    WaterModel probing(WaterQuantity quantity, List<TestMethod> methods) {
        return new WaterModel(inputs, quantities, kits.with(methods, inputs.level(quantity)), reaction, quantity);
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

    Kits kits() {
        return kits;
    }

    List<WaterStates.Noise> noises() {
        return noises;
    }

    StructuralModel structure() {
        return structure;
    }

    /** Whether a solution moves one of the levels. */
    boolean doses(Solution solution) {
        return states.containsKey(strength(solution));
    }

    // ── what is known before the first reading ──

    /** Without the plan. */
    Belief start() {
        return start;
    }

    /** What the plan states of the levels: readings by the keeper's first kit, of an unknown day. */
    List<Measurement> stated() {
        List<Measurement> measurements = new ArrayList<>();
        for (WaterQuantity quantity : quantities) {
            Known stated = inputs.stated(quantity);
            if (stated != null) {
                double[] row = trendRow(quantity);
                kits.methods().stream()
                        .filter(method -> method.quantity() == quantity)
                        .findFirst()
                        .ifPresent(method -> row[index(bias(method))] = kits.biasError(method));
                double error = stated.standardError();
                measurements.add(new Measurement(stated.value(), row, error * error));
            }
        }
        return measurements;
    }

    // ── what is read off the states ──

    /** The level at a time of day. */
    double[] levelRow(WaterQuantity quantity, double time) {
        double[] row = dayRow(quantity);
        double ahead = inputs.calcifying().ahead(time);
        for (String calcifying : List.of(CALCIFICATION, level(ALKALINITY))) {
            Integer state = states.get(calcifying);
            if (state != null) {
                row[state] += drives[levelState(quantity)][state] * ahead;
            }
        }
        if (states.containsKey(swing(quantity, true))) {
            row[index(swing(quantity, true))] = Math.cos(2 * Math.PI * time);
            row[index(swing(quantity, false))] = Math.sin(2 * Math.PI * time);
        }
        return row;
    }

    /** The level without what calcification and the sun do to it by the hour; what is dosed by the hour is still in it. */
    double[] dayRow(WaterQuantity quantity) {
        double[] row = trendRow(quantity);
        if (states.containsKey(restless(quantity))) {
            row[index(restless(quantity))] = 1;
        }
        return row;
    }

    /** By how much a level stands above its day for the hours at which it is dosed. */
    double dosedAhead(WaterQuantity quantity, double time) {
        return inputs.solutions().stream()
                .filter(this::doses)
                .mapToDouble(solution -> solution.effectOn(quantity) * solution.ahead(time))
                .sum();
    }

    /** The level as it is carried on from time to time. */
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
        double[] driven = drives[levelState(quantity)];
        for (int i = 0; i < driven.length; i++) {
            row[i] = -driven[i];
        }
        return row;
    }

    /** What the programmes bring a day as they stand at a time, beside {@link #dosed}: each may be stronger than it is said. */
    double[] dosedRow(WaterQuantity quantity, double time) {
        double[] row = new double[states.size()];
        for (Solution solution : inputs.solutions()) {
            Integer strength = states.get(strength(solution));
            if (strength != null) {
                row[strength] += solution.effectOn(quantity) * solution.perDay(time);
            }
        }
        return row;
    }

    /** What all programmes bring a day as they stand at a time, each as strong as it is said to be. */
    double dosed(WaterQuantity quantity, double time) {
        return inputs.solutions().stream()
                .mapToDouble(solution -> solution.effectOn(quantity) * solution.perDay(time))
                .sum();
    }

    /** By how much a solution is stronger than it is said to be; empty for one that moves none of the levels. */
    Optional<double[]> strengthRow(Solution solution) {
        if (!doses(solution)) {
            return Optional.empty();
        }
        double[] row = new double[states.size()];
        row[index(strength(solution))] = 1;
        return Optional.of(row);
    }

    /** The bias of a method. */
    double[] biasRow(TestMethod method) {
        double[] row = new double[states.size()];
        row[index(bias(method))] = kits.biasError(method);
        return row;
    }

    /** The change that nothing is known of. */
    double[] probeRow() {
        double[] row = new double[states.size()];
        row[index(PROBE)] = 1;
        return row;
    }

    /** A belief in which nothing is changed. */
    Belief unprobed(Belief belief) {
        int probe = index(PROBE);
        double[][] covariance = new double[belief.mean().length][];
        for (int i = 0; i < covariance.length; i++) {
            covariance[i] = belief.covariance()[i].clone();
            covariance[i][probe] = 0;
        }
        covariance[probe] = new double[covariance.length];
        return new Belief(belief.mean(), covariance);
    }

    /** What a method shows, its scatter apart. */
    double[] readingRow(TestMethod method, double time) {
        double[] row = levelRow(method.quantity(), time);
        row[index(bias(method))] = kits.biasError(method);
        return row;
    }

    /**
     * A reading.
     *
     * @param level at which its method scatters as much as it did
     */
    Measurement measure(TestMethod method, double time, double value, double level) {
        double error = method.repeatability(level);
        return new Measurement(value, readingRow(method, time), error * error);
    }

    /** What the checks of the methods showed of their biases. */
    List<Measurement> checks() {
        return inputs.checks().stream()
                .filter(check -> kits.methods().contains(check.method()))
                .map(this::measure)
                .toList();
    }

    private Measurement measure(Inputs.Check check) {
        double standard = check.standard().value();
        double[] row = new double[states.size()];
        row[index(bias(check.method()))] = check.method().biasError(standard);
        double error = check.method().repeatability(standard);
        double ofStandard = check.standard().standardError();
        return new Measurement(check.shown() - standard, row, error * error + ofStandard * ofStandard);
    }

    /**
     * A row mended for what a bias that grows with the level does beside the middle of the readings. With b its share and z
     * the state, a method shows L (1 + b z), and the model takes that for L + b M z:
     *
     * <pre>true level = level of the model - b (L - M) z</pre>
     *
     * <p>and so with differences in time. Of the method that errs by the least share.
     *
     * @param difference L - M
     */
    double[] scaled(double[] row, WaterQuantity quantity, double difference) {
        double[] scaled = row.clone();
        kits.methods().stream()
                .filter(method -> method.quantity() == quantity)
                .min(Comparator.comparingDouble(TestMethod::relativeBias))
                .ifPresent(best -> scaled[index(bias(best))] -= best.relativeBias() * difference);
        return scaled;
    }

    /** Middle of what the best method showed, at which its bias is reckoned; what is usual where there is none. */
    double middle(WaterQuantity quantity) {
        return kits.methods().stream()
                .filter(method -> method.quantity() == quantity)
                .min(Comparator.comparingDouble(TestMethod::relativeBias))
                .map(kits::middle)
                .orElse(inputs.level(quantity));
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
                    rises[levelState(quantity)] = amount * solution.effectOn(quantity);
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
        double[][] matrix = still.matrix();
        double[] input = new double[matrix.length];
        double[][] noise = new double[matrix.length][matrix.length];
        double share = renewal.share();
        for (WaterQuantity quantity : quantities) {
            Known water = renewal.newWater().get(quantity);
            if (water != null) {
                int level = levelState(quantity);
                matrix[level][level] = 1 - share;
                input[level] = share * water.value();
                noise[level][level] = Math.pow(share * water.standardError(), 2);
            }
        }
        return new Passage(matrix, input, noise);
    }

    /** Something moved: what is used may have changed at once. */
    Passage upset() {
        Passage passage = still.passage();
        loosen(passage, CALCIFICATION, UPSET * inputs.use(ALKALINITY).value());
        loosen(passage, NITRATE_PRODUCTION, UPSET_OF_ERROR * inputs.use(NITRATE).standardError());
        for (WaterQuantity quantity : EnumSet.complementOf(EnumSet.copyOf(WaterStates.MINERALS))) {
            loosen(passage, use(quantity), UPSET_OF_ERROR * inputs.use(quantity).standardError());
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
