package org.tidewright.husbandry.estimate;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.tidewright.husbandry.estimate.Inputs.Reading;
import org.tidewright.numerics.filter.Belief;
import org.tidewright.numerics.filter.Innovation;
import org.tidewright.plan.method.TestMethod;
import org.tidewright.plan.method.WaterQuantity;
import org.tidewright.seawater.unit.Unit;

/** What is known of one quantity: its level and its use a day at any time, and how each reading stands to that. */
public final class Estimate {
    private final WaterQuantity quantity;
    private final Fitted fitted;
    private final List<Judged> readings;

    /**
     * Level and use at one time.
     *
     * @param level at that time of day
     * @param overDay the level without what the hour adds to it or takes away: what calcifies by light, what is dosed by night
     * @param use a day, of the day around that time
     * @param dosed what all programmes bring a day as they stand then
     * @param renewed what the water changes of the four weeks to come bring a day, negative where they take away
     * @param change a day while the doses stay as they are, water changes included. It is known better than the use: readings show it, and what is
     *     not known of a dose's strength is in the use alone
     */
    public record Point(
            @Unit("d") double time,
            Known level,
            Known overDay,
            Known use,
            Known dosed,
            @Unit("*") double renewed,
            Known change) {}

    /** What became of a reading. */
    public enum Standing {
        /** It was learnt from. */
        TAKEN,
        /** It was learnt from, and so was that the level had jumped before it. */
        TAKEN_AFTER_JUMP,
        /** It stands too far off all others: test again before you act. */
        SET_ASIDE
    }

    /**
     * A reading and how it stands.
     *
     * @param expected of it when it came, the error of its method included
     * @param surprise how far it stood from that, in standard errors
     * @param off how far it stands from what all others let expect, in standard errors
     */
    public record Judged(
            Reading reading,
            Known expected,
            @Unit("1") double surprise,
            @Unit("1") double off,
            Standing standing) {}

    /** By how much the readings of a method are off at the middle of them all, as far as is known. */
    public record MethodBias(TestMethod method, Known bias) {}

    /**
     * How much a part of the quantity wanders.
     *
     * @param part which
     * @param usual size in half of all systems; a √day for walks
     * @param size that was learnt
     * @param taught share of the doubt of its logarithm that the journal took away
     */
    public record Wandering(
            String part,
            @Unit("*") double usual,
            @Unit("*") double size,
            @Unit("1") double taught) {}

    /**
     * Whether the surprises are as large as they should be.
     *
     * @param count of the readings, the first and those set aside left out
     * @param meanSquare of their surprises; 1 is right
     * @param within90 share of them that lay within their 90 % interval
     */
    public record Calibration(
            int count,
            @Unit("1") double meanSquare,
            @Unit("1") double within90) {}

    Estimate(WaterQuantity quantity, Fitted fitted) {
        this.quantity = quantity;
        this.fitted = fitted;
        this.readings = judged();
    }

    public WaterQuantity quantity() {
        return quantity;
    }

    /** What is known of a time, in the light of all readings; after the last line, what is to be expected. */
    public Point at(@Unit("d") double time) {
        return point(time, fitted.model(), fitted.at(time));
    }

    /**
     * What is to be expected after the last line if other doses are given than the inputs say.
     *
     * @param future {@link Inputs#dosed} of the inputs of this estimate
     */
    public Point ahead(@Unit("d") double time, Inputs future) {
        WaterModel model = fitted.model().with(future);
        return point(time, model, fitted.ahead(time, model));
    }

    /**
     * What a reading may show: after the last line, what a test that is made then will.
     *
     * @param method one by which it was read before
     */
    public Known reading(@Unit("d") double time, TestMethod method) {
        if (!fitted.model().kits().methods().contains(method)) {
            throw new IllegalArgumentException(quantity.words() + " was never read by " + method.name()
                    + "; nothing is known of how it would read");
        }
        Belief belief = fitted.at(time);
        double level = Math.max(0, belief.mean(fitted.model().levelRow(quantity, time)));
        double[] row = fitted.model().readingRow(method, time);
        return new Known(belief.mean(row), Math.hypot(belief.standardError(row), method.repeatability(level)));
    }

    private Point point(double time, WaterModel model, Belief belief) {
        double[] level = model.levelRow(quantity, time);
        double[] day = model.dayRow(quantity);
        double[] use = model.useRow(quantity);
        double[] dosed = model.dosedRow(quantity, time);
        double[] change = less(dosed, use);
        double said = model.dosed(quantity, time);
        double renewed = model.inputs().renewed(quantity, belief.mean(day), time);
        double fromMiddle = belief.mean(level) - model.middle(quantity);
        return new Point(
                time,
                known(belief, model.scaled(level, quantity, fromMiddle)),
                known(belief, model.scaled(day, quantity, fromMiddle)).plus(-model.dosedAhead(quantity, time)),
                known(belief, model.scaled(use, quantity, belief.mean(use))),
                known(belief, dosed).plus(said),
                renewed,
                known(belief, model.scaled(change, quantity, belief.mean(change) + said))
                        .plus(said + renewed));
    }

    /** What is missing a day for a level to be held, all doses left as they stand; negative where they bring too much. */
    public Known missing(@Unit("*") double level, @Unit("d") double time) {
        Point point = at(time);
        double changesThere = inputs().renewed(quantity, level, time);
        return new Known(
                point.renewed() - changesThere - point.change().value(),
                point.change().standardError());
    }

    private static double[] less(double[] row, double[] other) {
        double[] difference = row.clone();
        for (int i = 0; i < difference.length; i++) {
            difference[i] -= other[i];
        }
        return difference;
    }

    /** How many times as strong as it is said to be a solution is, at a time; from the said strength where no reading tells. */
    public Known strength(Solution solution, @Unit("d") double time) {
        return fitted.model()
                .strengthRow(solution)
                .map(row -> known(fitted.at(time), row).plus(1))
                .orElse(new Known(1, solution.strengthError()));
    }

    private static Known known(Belief belief, double[] row) {
        return new Known(belief.mean(row), belief.standardError(row));
    }

    /** All readings of the quantity, in order of time. */
    public List<Judged> readings() {
        return readings;
    }

    /** Biases of the methods it was read by. */
    public List<MethodBias> biases() {
        Belief now = fitted.reckoning().last();
        return readings.stream()
                .map(judged -> judged.reading().method())
                .distinct()
                .map(method -> new MethodBias(method, known(now, fitted.model().biasRow(method))))
                .toList();
    }

    /** How much it wanders, and what the journal taught of that. */
    public List<Wandering> wanderings() {
        List<Wandering> wanderings = new ArrayList<>();
        List<WaterStates.Noise> noises = fitted.model().noises();
        double[] errors = fitted.errorsOfSizes();
        for (int i = 0; i < errors.length; i++) {
            WaterStates.Noise noise = noises.get(i);
            if (noise.quantity() == quantity) {
                double left = errors[i] / noise.prior().spread(fitted.sizes()[i]);
                wanderings.add(
                        new Wandering(noise.part().words(), noise.prior().usual(), fitted.sizes()[i], 1 - left * left));
            }
        }
        return wanderings;
    }

    /** Of the surprises of the readings. */
    public Calibration calibration() {
        int count = 0;
        int within = 0;
        double squares = 0;
        for (Judged judged : readings.subList(Math.min(1, readings.size()), readings.size())) {
            if (judged.standing() != Standing.SET_ASIDE) {
                count++;
                squares += judged.surprise() * judged.surprise();
                within += judged.expected().holds(judged.reading().value(), 0.9) ? 1 : 0;
            }
        }
        return new Calibration(count, count == 0 ? 1 : squares / count, count == 0 ? 1 : (double) within / count);
    }

    private List<Judged> judged() {
        List<Judged> judged = new ArrayList<>();
        List<Reading> all = fitted.timeline().readings();
        for (int place = 0; place < all.size(); place++) {
            if (all.get(place).quantity() == quantity) {
                judged.add(judged(place));
            }
        }
        return List.copyOf(judged);
    }

    private Judged judged(int place) {
        Reading reading = fitted.timeline().readings().get(place);
        Evidence evidence = fitted.reckoning().evidence();
        Innovation surprise = fitted.reckoning().surprises()[place];
        Known expected = new Known(reading.value() - surprise.value(), Math.sqrt(surprise.variance()));
        Standing standing = Standing.TAKEN;
        if (!evidence.counts(place)) {
            standing = Standing.SET_ASIDE;
        } else if (evidence.jumps(place)) {
            standing = Standing.TAKEN_AFTER_JUMP;
        }
        return new Judged(reading, expected, surprise.score(), fitted.off(place).score(), standing);
    }

    /** The reading of a line, if it is one of these. */
    public Optional<Judged> reading(UUID line) {
        return readings.stream()
                .filter(judged -> judged.reading().line().equals(line))
                .findFirst();
    }

    /** What it was worked out from. */
    public Inputs inputs() {
        return fitted.model().inputs();
    }

    Fitted fitted() {
        return fitted;
    }
}
