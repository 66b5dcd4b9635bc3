package org.tidewright.husbandry.mixing;

import java.util.List;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.stream.IntStream;
import org.tidewright.husbandry.advice.Advice;
import org.tidewright.husbandry.limit.Keeping;
import org.tidewright.plan.method.WaterQuantity;
import org.tidewright.seawater.range.Bounds;
import org.tidewright.seawater.unit.Unit;

/**
 * Change after change of the same size, and what the system makes or uses in between. With w the share that is changed, n
 * the new water, r the rate and T the time between two changes, a quantity stands after the k-th change at
 *
 * <pre>
 * c_k = c* + (c_1 - c*) (1 - w)^(k-1),  c_1 = (1 - w) c_0 + w n,  c* = n + r T (1 - w) / w
 * </pre>
 *
 * and before the next at c_k + r T; in the long run at n + r T / w. The first change is made at once.
 *
 * @param now c_0
 * @param target to be reached right after a change
 * @param newWater n
 * @param share w
 * @param rate r, negative where the system uses more than it makes
 * @param interval T
 */
public record ChangeSeries(
        WaterQuantity quantity,
        @Unit("*") double now,
        @Unit("*") double target,
        @Unit("*") double newWater,
        @Unit("1") double share,
        @Unit("*") double rate,
        @Unit("s") double interval) {
    private static final int HALVINGS = 60;

    /** Whether the target is reached, or why not. */
    public enum Reach {
        /** It stands there already. */
        THERE,
        REACHED,
        /** The new water itself stands on the wrong side of the target. */
        NEW_WATER,
        /** What the system makes or uses in between outruns what the changes move. */
        OUTRUN
    }

    /**
     * One change.
     *
     * @param number from 1
     * @param time since the first
     */
    public record Step(
            int number,
            @Unit("s") double time,
            @Unit("*") double before,
            @Unit("*") double after) {}

    /** Refuses what cannot be meant. */
    public ChangeSeries {
        if (quantity == WaterQuantity.TEMPERATURE || !KnownWater.KEPT.contains(quantity)) {
            throw new IllegalArgumentException(quantity.words()
                    + " is not carried off by changes of water; it must be a thing dissolved, as nitrate is");
        }
        Bounds.notNegative(now, quantity.held(), quantity.words() + " now");
        Bounds.notNegative(target, quantity.held(), "target");
        Bounds.notNegative(newWater, quantity.held(), quantity.words() + " of the new water");
        Bounds.within(share, "1", 0, 1, "share changed", "is it in percent?");
        Bounds.positive(share, "1", "share changed");
        Bounds.finite(rate, quantity.held() + "/s", "rate");
        Bounds.positive(interval, "s", "time between changes");
    }

    /**
     * The series of a change. Its share is of mass; a value per litre of the new water is brought to the system's density,
     * which is taken to stay.
     *
     * @param quantity known of both waters
     */
    public static ChangeSeries of(
            WaterChange change,
            WaterQuantity quantity,
            @Unit("*") double target,
            @Unit("*") double rate,
            @Unit("s") double interval) {
        double density = quantity == WaterQuantity.SALINITY
                ? 1
                : change.system().water().density() / change.newWater().density();
        return new ChangeSeries(
                quantity,
                known(change.system().water(), quantity, "the system"),
                target,
                known(change.newWater(), quantity, "the new water") * density,
                change.share(),
                rate,
                interval);
    }

    private static double known(KnownWater water, WaterQuantity quantity, String whose) {
        return water.value(quantity)
                .orElseThrow(() -> new IllegalArgumentException(
                        quantity.words() + " of " + whose + " is not known; measure it first"));
    }

    /** After so many changes. */
    public @Unit("*") double after(int changes) {
        if (changes == 0) {
            return now;
        }
        return settledAfter() + (first() - settledAfter()) * Math.pow(1 - share, changes - 1.0);
    }

    /** Before the change of this number, from 1. */
    public @Unit("*") double before(int number) {
        return number == 1 ? now : after(number - 1) + rate * interval;
    }

    private double first() {
        return (1 - share) * now + share * newWater;
    }

    /** After each change, in the long run. */
    public @Unit("*") double settledAfter() {
        return newWater + rate * interval * (1 - share) / share;
    }

    /** Before each change, in the long run. */
    public @Unit("*") double settledBefore() {
        return newWater + rate * interval / share;
    }

    /** Beyond the target on the far side of where it stands now; 0 at it. */
    private double beyond(double value) {
        return target < now ? target - value : value - target;
    }

    public Reach reach() {
        if (target == now) {
            return Reach.THERE;
        } else if (beyond(first()) >= 0 || beyond(settledAfter()) > 0) {
            return Reach.REACHED;
        }
        return beyond(newWater) > 0 ? Reach.OUTRUN : Reach.NEW_WATER;
    }

    /** How many changes until it is at the target; empty where none are enough. */
    public OptionalInt changes() {
        Reach reach = reach();
        if (reach == Reach.THERE) {
            return OptionalInt.of(0);
        } else if (reach != Reach.REACHED) {
            return OptionalInt.empty();
        } else if (beyond(first()) >= 0) {
            return OptionalInt.of(1);
        }
        double left = (target - settledAfter()) / (first() - settledAfter());
        double more = Math.log(left) / Math.log1p(-share);
        return OptionalInt.of(1 + (int) Math.ceil(more - 1e-9));
    }

    /** Whether it stays at the target until the next change too, if they are kept up. */
    public boolean holds() {
        return beyond(settledBefore()) >= 0 && beyond(settledAfter()) >= 0;
    }

    /** The first of the changes, one by one. */
    public List<Step> steps(int changes) {
        return IntStream.rangeClosed(1, changes)
                .mapToObj(k -> new Step(k, (k - 1) * interval, before(k), after(k)))
                .toList();
    }

    /** The same with changes of another size. */
    public ChangeSeries withShare(@Unit("1") double other) {
        return new ChangeSeries(quantity, now, target, newWater, other, rate, interval);
    }

    /**
     * The share to change each time so that so many changes end at the target; empty where no share does, because the new
     * water stands on the wrong side or the system comes there by itself. Found by halving: the bigger the changes, the
     * nearer the end lies to the new water.
     */
    public OptionalDouble shareFor(int changes) {
        double none = now + rate * interval * (changes - 1);
        if (changes < 1 || beyond(newWater) < 0 || beyond(none) >= 0) {
            return OptionalDouble.empty();
        }
        double small = 0;
        double large = 1;
        for (int i = 0; i < HALVINGS; i++) {
            double middle = (small + large) / 2;
            if (beyond(withShare(middle).after(changes)) < 0) {
                small = middle;
            } else {
                large = middle;
            }
        }
        return OptionalDouble.of(large);
    }

    /** The least share that holds it at the target after each change in the long run; empty where none does. */
    public OptionalDouble shareToHold() {
        double made = rate * interval;
        double room = target - newWater;
        if (made == 0 || Math.signum(made) != Math.signum(room)) {
            return OptionalDouble.empty();
        }
        return OptionalDouble.of(made / (room + made));
    }

    /** The volume that makes so large a share of the mass. */
    public static @Unit("m^3") double volume(Portion system, KnownWater newWater, @Unit("1") double share) {
        double old = system.water().density();
        double put = newWater.density();
        return share * system.volume() * old / (put + share * (old - put));
    }

    /** Standard error after so many changes by those of where it stands now and of the rate; the other numbers hold. */
    public @Unit("*") double errorAfter(int changes, @Unit("*") double nowError, @Unit("*") double rateError) {
        if (changes == 0) {
            return nowError;
        }
        double left = Math.pow(1 - share, changes - 1.0);
        return Math.hypot((1 - share) * left * nowError, interval * (1 - share) * (1 - left) / share * rateError);
    }

    /** How many changes, and whether it stays. */
    public Advice advice(WaterChange change, Keeping keeping) {
        return advice(change, keeping, 0);
    }

    /**
     * How many changes, and whether it stays.
     *
     * @param rateError one standard error of the rate; that of where it stands now is the system's own
     */
    public Advice advice(WaterChange change, Keeping keeping, @Unit("*") double rateError) {
        return new SeriesWords(this, change, keeping, rateError).advice();
    }
}
