package org.tidewright.husbandry.quantity;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.OptionalDouble;
import java.util.UUID;
import org.tidewright.husbandry.estimate.Estimate;
import org.tidewright.husbandry.estimate.Inputs;
import org.tidewright.husbandry.estimate.Known;
import org.tidewright.husbandry.estimate.Solution;
import org.tidewright.plan.method.TestMethod;
import org.tidewright.seawater.unit.Unit;

/**
 * A quantity over time, for a chart and its table: all that is known of it, or a part. Levels are those of the hour at which
 * the keeper usually tests, so that they lie where the readings do; those of the whole day where only a probe reads.
 *
 * @param past levels up to now, in the light of all readings
 * @param ahead levels from now on, all doses left as they stand
 * @param readings of the keeper's own, in order of time; hours of a probe are not among them
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
    /** So many days back there is a level for each day; before that for each fourth, as keepers test twice a week. */
    private static final double DAILY = 400;

    private static final double SELDOM = 4;

    /** Readings that tell the hour at which a keeper tests. */
    private static final int LATELY = 20;

    /** A level at a time. */
    public record Point(Instant at, Known level) {
        private static List<Point> within(List<Point> points, Instant start, Instant end) {
            List<Point> within = new ArrayList<>();
            for (int i = 0; i < points.size(); i++) {
                Point point = points.get(i);
                if (i > 0) {
                    Point before = points.get(i - 1);
                    for (Instant edge : List.of(start, end)) {
                        if (before.at.isBefore(edge) && edge.isBefore(point.at)) {
                            within.add(before.towards(point, edge));
                        }
                    }
                }
                if (!point.at.isBefore(start) && !point.at.isAfter(end)) {
                    within.add(point);
                }
            }
            return within;
        }

        private Point towards(Point later, Instant time) {
            double share = (double) Duration.between(at, time).toMillis()
                    / Duration.between(at, later.at).toMillis();
            return new Point(
                    time,
                    new Known(
                            level.value() + share * (later.level.value() - level.value()),
                            level.standardError() + share * (later.level.standardError() - level.standardError())));
        }
    }

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
    public record Step(Instant from, Known brings) {}

    /** All of it. */
    static QuantityCourse of(
            Estimate estimate, List<Estimate.Judged> readings, @Unit("d") double now, @Unit("d") double to) {
        Inputs inputs = estimate.inputs();
        double from = Math.min(now, estimate.readings().get(0).reading().time());
        OptionalDouble hour = usualHour(readings);
        return new QuantityCourse(
                inputs.at(from),
                inputs.at(now),
                inputs.at(to),
                points(estimate, times(from, now), hour),
                points(estimate, times(now, to), hour),
                dots(inputs, readings),
                steps(estimate, from, now));
    }

    /** A part of it; at its ends the level is taken from the two next to them. */
    public QuantityCourse within(Instant start, Instant end) {
        return new QuantityCourse(
                start,
                now,
                end,
                Point.within(past, start, end),
                Point.within(ahead, start, end),
                readings.stream()
                        .filter(dot -> !dot.at().isBefore(start) && dot.at().isBefore(end))
                        .toList(),
                doses(start, end));
    }

    /** The dose that stood when it begins, and those that came within. */
    private List<Step> doses(Instant start, Instant end) {
        List<Step> within = new ArrayList<>();
        for (Step step : doses) {
            if (!step.from().isAfter(start)) {
                within.clear();
                within.add(new Step(start, step.brings()));
            } else if (step.from().isBefore(end)) {
                within.add(step);
            }
        }
        return within;
    }

    /** From one to the other, both with it, no further apart than a level is wanted for. */
    private static List<Double> times(double from, double to) {
        List<Double> times = new ArrayList<>();
        for (double at = to; at > from; at -= to - at < DAILY ? 1 : SELDOM) {
            times.add(at);
        }
        if (times.isEmpty()) {
            times.add(to);
        }
        times.add(from);
        Collections.reverse(times);
        return times;
    }

    private static List<Point> points(Estimate estimate, List<Double> times, OptionalDouble hour) {
        return times.stream()
                .map(at -> new Point(estimate.inputs().at(at), level(estimate, at, hour)))
                .toList();
    }

    /** The level of a day, moved to its usual hour. */
    private static Known level(Estimate estimate, double time, OptionalDouble hour) {
        Known day = estimate.at(time).overDay();
        if (hour.isEmpty()) {
            return day;
        }
        Estimate.Point then = estimate.at(Math.floor(time) + hour.getAsDouble());
        return day.plus(then.level().value() - then.overDay().value());
    }

    /** The middle of the times of day of the last readings; empty where there are none. */
    private static OptionalDouble usualHour(List<Estimate.Judged> readings) {
        double[] hours = readings.subList(Math.max(0, readings.size() - LATELY), readings.size()).stream()
                .mapToDouble(judged -> judged.reading().time())
                .map(time -> time - Math.floor(time))
                .sorted()
                .toArray();
        return hours.length == 0 ? OptionalDouble.empty() : OptionalDouble.of(hours[hours.length / 2]);
    }

    private static List<Dot> dots(Inputs inputs, List<Estimate.Judged> readings) {
        return readings.stream()
                .map(judged -> new Dot(
                        judged.reading().line(),
                        inputs.at(judged.reading().time()),
                        judged.reading().value(),
                        judged.reading().method().standardError(judged.reading().value()),
                        judged.reading().method(),
                        judged.expected(),
                        judged.off(),
                        judged.standing() == Estimate.Standing.SET_ASIDE))
                .toList();
    }

    private static List<Step> steps(Estimate estimate, double from, double now) {
        List<Double> times = new ArrayList<>(List.of(from));
        boolean dosed = false;
        Inputs inputs = estimate.inputs();
        for (Solution solution : inputs.solutions()) {
            if (solution.effectOn(estimate.quantity()) != 0) {
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
                        .map(time -> new Step(inputs.at(time), estimate.at(time).dosed()))
                        .toList()
                : List.of();
    }
}
