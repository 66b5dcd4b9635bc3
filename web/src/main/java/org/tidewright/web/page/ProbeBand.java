package org.tidewright.web.page;

import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.tidewright.husbandry.advice.Figure;
import org.tidewright.husbandry.advice.FigureText;
import org.tidewright.husbandry.advice.Measure;
import org.tidewright.husbandry.journal.ProbeLog;
import org.tidewright.husbandry.journal.ProbeLog.Bin;
import org.tidewright.husbandry.journal.Span;
import org.tidewright.husbandry.quantity.ProbeWatch;
import org.tidewright.husbandry.quantity.Told;
import org.tidewright.plan.method.WaterQuantity;
import org.tidewright.plan.model.UnitSystem;
import org.tidewright.web.chart.ReadingsChart;
import org.tidewright.web.chart.Thinned;

/**
 * What the probe of a quantity said within the days of a chart, in the quantity's coherent unit.
 *
 * @param watch null where there is no probe
 * @param values in order of time, each of a stretch of one length
 */
record ProbeBand(@Nullable ProbeWatch watch, Instant from, Instant to, List<Thinned.Value> values) {
    /** Stretches that are asked for: a month by the hour, three years by the day. */
    private static final int ASKED = 1100;

    private static final int COLUMNS = 200;

    /** Lines of its table, and places at which it is told in words. */
    private static final int LINES = 36;

    /** A break is longer than so many columns. */
    private static final double BREAK = 2.5;

    private static final List<Duration> LENGTHS =
            List.of(Duration.ofDays(1), Duration.ofHours(1), Duration.ofMinutes(1));

    static ProbeBand of(ProbeLog log, String system, @Nullable ProbeWatch watch, ChartSpan span, ZoneId zone) {
        Instant from = span.start(zone);
        Instant to = span.end(zone);
        List<Bin> bins = watch == null ? List.of() : log.bins(system, watch.probe(), new Span(from, to), ASKED);
        Duration half = length(bins).dividedBy(2);
        List<Thinned.Value> values = bins.stream()
                .map(bin -> new Thinned.Value(
                        QuantityChart.place(bin.from().plus(half), from, to),
                        bin.count(),
                        bin.least(),
                        bin.mean(),
                        bin.most()))
                .toList();
        return new ProbeBand(watch, from, to, values);
    }

    /** The day on which a probe began to speak. */
    static Optional<LocalDate> first(ProbeLog log, String system, @Nullable ProbeWatch watch, ZoneId zone) {
        return watch == null
                ? Optional.empty()
                : log.bins(system, watch.probe(), Span.EVER, 1).stream()
                        .findFirst()
                        .map(bin -> LocalDate.ofInstant(bin.from(), zone));
    }

    /** Of the stretches, as far as their beginnings tell it; none where the values came one by one. */
    private static Duration length(List<Bin> bins) {
        if (bins.stream().allMatch(bin -> bin.count() == 1)) {
            return Duration.ZERO;
        }
        return LENGTHS.stream()
                .filter(length -> bins.stream().allMatch(bin -> bin.from().toEpochMilli() % length.toMillis() == 0))
                .findFirst()
                .orElse(Duration.ZERO);
    }

    boolean isEmpty() {
        return values.isEmpty();
    }

    /** {@code the probe “sump”}; empty where there is none. */
    String words() {
        return watch == null ? "" : watch.words();
    }

    /** As stretches without a break, in the reader's unit. */
    List<List<Thinned.Column>> drawn(Measure.Unit unit) {
        List<Thinned.Column> columns = Thinned.of(values, COLUMNS);
        List<List<Thinned.Column>> stretches = new ArrayList<>();
        double apart = apart(columns);
        Thinned.Column before = null;
        for (Thinned.Column column : columns) {
            if (before == null || column.from() - before.to() > BREAK * apart) {
                stretches.add(new ArrayList<>());
            }
            stretches
                    .get(stretches.size() - 1)
                    .add(new Thinned.Column(
                            column.from(),
                            column.to(),
                            column.count(),
                            unit.shown(column.least()),
                            unit.shown(column.mean()),
                            unit.shown(column.most())));
            before = column;
        }
        return stretches;
    }

    /** The middle one of the steps from column to column, and no less than a column. */
    private static double apart(List<Thinned.Column> columns) {
        double[] steps = new double[Math.max(0, columns.size() - 1)];
        for (int i = 0; i < steps.length; i++) {
            steps[i] = columns.get(i + 1).from() - columns.get(i).to();
        }
        Arrays.sort(steps);
        return Math.max(1.0 / COLUMNS, steps.length == 0 ? 0 : steps[steps.length / 2]);
    }

    /** At a few places, in words. */
    List<ReadingsChart.Told> told(WaterQuantity quantity, ZoneId zone, UnitSystem units) {
        Measure.Unit unit = Told.level(quantity).unit(units);
        return Thinned.of(values, LINES).stream()
                .map(column -> new ReadingsChart.Told(
                        column.at(),
                        unit.shown(column.mean()),
                        QuantityChart.days(column, from, to, zone) + ": " + words() + " said "
                                + spread(column, quantity, units) + "."))
                .toList();
    }

    /** The lines of its table, the newest first. */
    List<QuantityPage.ProbeLine> table(WaterQuantity quantity, ZoneId zone, UnitSystem units) {
        List<QuantityPage.ProbeLine> lines = new ArrayList<>();
        for (Thinned.Column column : Thinned.of(values, LINES)) {
            lines.add(
                    0,
                    new QuantityPage.ProbeLine(
                            QuantityChart.days(column, from, to, zone),
                            text(column.least(), quantity, units).line(),
                            text(column.mean(), quantity, units).line(),
                            text(column.most(), quantity, units).line()));
        }
        return lines;
    }

    /** {@code from 7.9 to 8.3 dKH, 8.1 dKH in the mean}. */
    static String spread(Thinned.Column column, WaterQuantity quantity, UnitSystem units) {
        FigureText least = text(column.least(), quantity, units);
        FigureText most = text(column.most(), quantity, units);
        if (least.line().equals(most.line())) {
            return least.line();
        }
        return "from " + least.value() + " to " + most.line() + ", "
                + text(column.mean(), quantity, units).line() + " in the mean";
    }

    private static FigureText text(double value, WaterQuantity quantity, UnitSystem units) {
        return FigureText.of(Figure.exact(Told.level(quantity), value), units);
    }
}
