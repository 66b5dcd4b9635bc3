package org.tidewright.husbandry.quantity;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.UUID;
import org.tidewright.husbandry.estimate.Estimate;
import org.tidewright.husbandry.estimate.Inputs;
import org.tidewright.husbandry.estimate.Known;
import org.tidewright.husbandry.estimate.Solution;
import org.tidewright.plan.method.TestMethod;
import org.tidewright.plan.method.WaterQuantity;
import org.tidewright.seawater.unit.Unit;

/**
 * A quantity over time, for a chart and its table.
 *
 * @param past levels up to now, in the light of all readings
 * @param ahead levels from now on, all doses left as they stand
 * @param readings in order of time
 * @param doses what is dosed of it, a day, in steps; empty where nothing is
 */
public record QuantityCourse(
        Instant from,
        Instant now,
        Instant to,
        List<Point> past,
        List<Point> ahead,
        List<Dot> readings,
        List<Step> doses) {
    private static final int MOST_POINTS = 240;

    /** A level at a time. */
    public record Point(Instant at, Known level) {}

    /**
     * A reading.
     *
     * @param error of the method, scatter and bias together
     * @param expected of it before it came
     * @param off how many standard errors it stands off all others
     */
    public record Dot(
            UUID line,
            Instant at,
            @Unit("*") double value,
            @Unit("*") double error,
            TestMethod method,
            Known expected,
            @Unit("1") double off,
            boolean setAside) {}

    /** A dose from a time on, as what it brings a day. */
    public record Step(Instant from, @Unit("*") double brings) {}

    static QuantityCourse of(Estimate estimate, @Unit("d") double from, @Unit("d") double now, @Unit("d") double to) {
        Inputs inputs = estimate.inputs();
        return new QuantityCourse(
                inputs.at(from),
                inputs.at(now),
                inputs.at(to),
                points(estimate, from, now),
                points(estimate, now, to),
                dots(estimate, from),
                steps(inputs, estimate.quantity(), from, now));
    }

    private static List<Point> points(Estimate estimate, double from, double to) {
        int count = (int) Math.max(2, Math.min(MOST_POINTS, Math.ceil(to - from) + 1));
        List<Point> points = new ArrayList<>(count);
        for (int i = 0; i < count; i++) {
            double at = from + (to - from) * i / (count - 1);
            points.add(new Point(estimate.inputs().at(at), estimate.at(at).level()));
        }
        return points;
    }

    private static List<Dot> dots(Estimate estimate, double from) {
        return estimate.readings().stream()
                .filter(judged -> judged.reading().time() >= from)
                .map(judged -> new Dot(
                        judged.reading().line(),
                        estimate.inputs().at(judged.reading().time()),
                        judged.reading().value(),
                        judged.reading().method().standardError(judged.reading().value()),
                        judged.reading().method(),
                        judged.expected(),
                        judged.off(),
                        judged.standing() == Estimate.Standing.SET_ASIDE))
                .toList();
    }

    private static List<Step> steps(Inputs inputs, WaterQuantity quantity, double from, double now) {
        List<Double> times = new ArrayList<>(List.of(from));
        boolean dosed = false;
        for (Solution solution : inputs.solutions()) {
            if (solution.effect().getOrDefault(quantity, 0.0) != 0) {
                dosed = true;
                solution.programme().stream()
                        .map(Solution.Portion::time)
                        .filter(time -> time > from && time <= now)
                        .forEach(times::add);
            }
        }
        return dosed
                ? times.stream()
                        .sorted()
                        .distinct()
                        .map(time -> new Step(inputs.at(time), Dosed.of(inputs, quantity, time)))
                        .toList()
                : List.of();
    }
}
