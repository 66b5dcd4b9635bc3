package org.tidewright.husbandry.estimate;

import java.util.ArrayList;
import java.util.List;
import org.tidewright.numerics.filter.Belief;
import org.tidewright.numerics.filter.LinearFilter;
import org.tidewright.numerics.filter.Measurement;
import org.tidewright.numerics.filter.Passage;
import org.tidewright.numerics.filter.Stretch;
import org.tidewright.plan.method.TestMethod;
import org.tidewright.plan.method.WaterQuantity;
import org.tidewright.seawater.unit.Unit;

/**
 * How much will be known of a quantity after tests that were not made yet. What a filter's errors will be depends on when it
 * is told something and how surely, and not on what; so the covariance is run ahead without readings.
 */
public final class Foresight {
    /**
     * Standard errors that a change must be apart from none to be seen: 1.96 + 0.84, a test with a significance of 5 % and a
     * power of 80 %.
     */
    @Unit("1")
    public static final double SEEN = 2.80;

    private Foresight() {}

    /** A test to be made. */
    public record Test(@Unit("d") double time, TestMethod method) {}

    /**
     * What will be known after a test.
     *
     * @param level standard error of the level
     * @param use standard error of the use a day
     * @param change standard error with which something that was changed then, by an amount nothing is known of, is told from
     *     all else: a change of the use, or of what a moved dose does
     */
    public record Foreseen(
            @Unit("d") double time,
            @Unit("*") double level,
            @Unit("*") double use,
            @Unit("*") double change) {
        /** Whether a change of a size will be seen by then, if it lasts. */
        public boolean shows(@Unit("*") double size) {
            return Math.abs(size) >= SEEN * change;
        }
    }

    /**
     * What will be known of an estimate's quantity after each test.
     *
     * @param changing when something is changed, not before the last line
     * @param tests of that quantity from then on, in order of time
     */
    public static List<Foreseen> of(Estimate estimate, @Unit("d") double changing, List<Test> tests) {
        Fitted fitted = estimate.fitted();
        WaterModel known = fitted.model();
        if (changing < known.inputs().until()) {
            throw new IllegalArgumentException(
                    "a change cannot be foreseen at day " + changing + ", before the last line of the journal at day "
                            + known.inputs().until());
        }
        List<TestMethod> methods = tests.stream().map(Test::method).distinct().toList();
        WaterModel probed = known.probing(estimate.quantity(), methods);
        Belief then = probed.taken(known, fitted.ahead(changing, known));
        return run(probed, then, fitted.sizes(), estimate.quantity(), changing, tests);
    }

    /** From what a model that probes the quantity believes when the change is made. */
    static List<Foreseen> run(
            WaterModel model, Belief then, double[] sizes, WaterQuantity quantity, double changing, List<Test> tests) {
        LinearFilter changed = new LinearFilter(then);
        LinearFilter unchanged = new LinearFilter(model.unprobed(then));
        double now = changing;
        List<Foreseen> foreseen = new ArrayList<>();
        for (Test test : tests) {
            for (Renewal renewal : model.inputs().renewals()) {
                if (renewal.time() > now && renewal.time() <= test.time()) {
                    Passage drift = passage(model, sizes, now, renewal.time());
                    Passage change = model.renewal(renewal);
                    for (LinearFilter filter : List.of(changed, unchanged)) {
                        filter.pass(drift);
                        filter.pass(change);
                    }
                    now = renewal.time();
                }
            }
            Passage drift = passage(model, sizes, now, test.time());
            now = test.time();
            changed.pass(drift);
            unchanged.pass(drift);
            double[] row = model.levelRow(quantity, now);
            double level = Math.max(0, unchanged.belief().mean(row));
            Measurement measurement = model.measure(test.method(), now, level, level);
            changed.learn(measurement);
            unchanged.learn(measurement);
            Belief known = unchanged.belief();
            foreseen.add(new Foreseen(
                    now,
                    known.standardError(row),
                    known.standardError(model.useRow(quantity)),
                    changed.belief().standardError(model.probeRow())));
        }
        return foreseen;
    }

    private static Passage passage(WaterModel model, double[] sizes, double from, double to) {
        Stretch stretch = model.structure().stretch(to - from);
        Passage passage = model.passage(stretch, from);
        stretch.shake(passage, sizes);
        return passage;
    }
}
