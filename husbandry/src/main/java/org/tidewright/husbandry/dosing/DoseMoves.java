package org.tidewright.husbandry.dosing;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.tidewright.husbandry.estimate.Estimate;
import org.tidewright.husbandry.estimate.Estimates;
import org.tidewright.husbandry.estimate.Foresight;
import org.tidewright.husbandry.estimate.Inputs;
import org.tidewright.husbandry.estimate.Solution;
import org.tidewright.husbandry.journal.Event;
import org.tidewright.husbandry.journal.Line;
import org.tidewright.plan.method.TestMethod;
import org.tidewright.plan.method.WaterQuantity;

/** When the last move of a dose will be told from noise. */
public final class DoseMoves {

    private static final double DAY = 86_400;
    /** A use wanders: what is not told within four weeks is told by nothing but luck. */
    private static final double LONGEST_WAIT = 28;

    /** A change too small to be told is left for a fortnight, common practice; from then on the level alone counts. */
    private static final double UNTOLD = 14;

    private static final double A_SECOND = 1 / DAY;

    private DoseMoves() {}

    /** What was known of the water before a time. */
    @FunctionalInterface
    public interface Before {
        Estimates of(Instant time);
    }

    /** A move that the journal tells of: of what, and how much more a day. */
    private record Move(Line line, Solution solution, double more) {}

    /**
     * The settling of the last move that bears on a quantity; empty where there was none, or its effect is told by now.
     *
     * @param inputs of the present
     * @param lines that stand, in order of time
     * @param pace of the keeper's tests
     */
    public static Optional<Settling> settling(
            Inputs inputs, List<Line> lines, WaterQuantity quantity, Instant now, TestPace pace, Before before) {
        return lastMove(inputs, lines, quantity)
                .flatMap(move -> settling(inputs, lines, quantity, now, pace, move, before))
                .filter(settling -> settling.until().isAfter(now));
    }

    private static Optional<Settling> settling(
            Inputs inputs,
            List<Line> lines,
            WaterQuantity quantity,
            Instant now,
            TestPace pace,
            Move move,
            Before before) {
        Instant moved = move.line().at().toInstant();
        Optional<Estimate> then = before.of(moved).of(quantity);
        if (then.isEmpty()) {
            return Optional.empty();
        }
        List<Instant> made = lines.stream()
                .filter(line -> line.event() instanceof Event.Reading reading && reading.quantity() == quantity)
                .map(line -> line.at().toInstant())
                .filter(at -> at.isAfter(moved) && !at.isAfter(now))
                .toList();
        double change = move.more()
                * move.solution().effectOn(quantity)
                * then.get().strength(move.solution(), inputs.time(moved)).value();
        Told usual = told(then.get(), moved, made, pace.every(), pace.method(), change);
        Told daily = told(then.get(), moved, made, Math.min(1, pace.every()), pace.method(), change);
        return Optional.of(new Settling(
                ((Event.LeverMoved) move.line().event()).lever(), moved, change, usual.at(), usual.told(), daily.at()));
    }

    private record Told(Instant at, boolean told) {}

    private static Told told(
            Estimate then, Instant moved, List<Instant> made, double every, TestMethod method, double change) {
        Inputs inputs = then.inputs();
        double from = inputs.time(moved);
        List<Foresight.Test> tests = new ArrayList<>();
        made.forEach(at -> tests.add(new Foresight.Test(inputs.time(at), method)));
        double last = tests.isEmpty() ? from : tests.get(tests.size() - 1).time();
        for (double at = last + every; at <= from + LONGEST_WAIT; at += every) {
            tests.add(new Foresight.Test(at, method));
        }
        for (Foresight.Foreseen foreseen : Foresight.of(then, from, tests)) {
            if (foreseen.shows(change)) {
                return new Told(inputs.at(foreseen.time()), true);
            }
        }
        return new Told(inputs.at(from + UNTOLD), false);
    }

    private static Optional<Move> lastMove(Inputs inputs, List<Line> lines, WaterQuantity quantity) {
        for (int i = lines.size() - 1; i >= 0; i--) {
            Line line = lines.get(i);
            if (line.event() instanceof Event.LeverMoved moved) {
                for (Solution solution : inputs.solutions()) {
                    if (solution.lever().equals(moved.lever()) && solution.effectOn(quantity) != 0) {
                        double before = solution.perDay(inputs.time(line.at().toInstant()) - A_SECOND);
                        double more = moved.after() * DAY - before;
                        return more == 0 ? Optional.empty() : Optional.of(new Move(line, solution, more));
                    }
                }
            }
        }
        return Optional.empty();
    }
}
