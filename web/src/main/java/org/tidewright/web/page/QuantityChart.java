package org.tidewright.web.page;

import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;
import org.tidewright.husbandry.advice.Figure;
import org.tidewright.husbandry.advice.FigureText;
import org.tidewright.husbandry.advice.Measure;
import org.tidewright.husbandry.limit.TargetRange;
import org.tidewright.husbandry.quantity.QuantityCourse;
import org.tidewright.husbandry.quantity.QuantityStudy;
import org.tidewright.husbandry.quantity.Told;
import org.tidewright.plan.method.WaterQuantity;
import org.tidewright.plan.model.UnitSystem;
import org.tidewright.web.chart.ReadingsChart;

/** From a study to what its chart draws: the reader's units, places on the scale of time, words. */
final class QuantityChart {
    /** Nine of ten normal values lie within so many standard errors. */
    private static final double NINE_OF_TEN = 1.645;

    private static final int MOST_BARS = 16;
    private static final double DAY = 86_400;
    private static final DateTimeFormatter DATE = DateTimeFormatter.ofPattern("d MMM", Locale.ENGLISH);
    private static final DateTimeFormatter WEEKDAY = DateTimeFormatter.ofPattern("EEEE d MMMM", Locale.ENGLISH);
    private static final DateTimeFormatter SHORT = DateTimeFormatter.ofPattern("EEE d MMM", Locale.ENGLISH);
    private static final DateTimeFormatter TIME = DateTimeFormatter.ofPattern("EEE d MMM yyyy, HH:mm", Locale.ENGLISH);

    private final QuantityStudy study;
    private final QuantityCourse course;
    private final ZoneId zone;
    private final UnitSystem units;
    private final Measure.Unit unit;

    private QuantityChart(QuantityStudy study, ZoneId zone, UnitSystem units) {
        this.study = study;
        this.zone = zone;
        this.units = units;
        course = study.course();
        unit = Told.level(study.quantity()).unit(units);
    }

    static ReadingsChart.Content of(QuantityStudy study, ZoneId zone, UnitSystem units) {
        return new QuantityChart(study, zone, units).content();
    }

    private ReadingsChart.Content content() {
        TargetRange range = study.range();
        return new ReadingsChart.Content(
                told(),
                course.readings().stream().map(this::dot).toList(),
                points(course.past()),
                points(course.ahead()),
                range == null ? Double.NaN : unit.shown(range.least()),
                range == null ? Double.NaN : unit.shown(range.most()),
                "range " + range(study, units),
                settles(),
                doses(),
                place(course.now()),
                bars(),
                marks());
    }

    private String told() {
        return study.quantity().words() + " from " + day(course.from(), zone) + " to " + day(course.to(), zone) + ": "
                + course.readings().size()
                + " readings, the estimate with its band, and what is to be expected. The table below holds every reading;"
                + " use the left and right arrow keys to step through them.";
    }

    private double place(Instant at) {
        double whole = Duration.between(course.from(), course.to()).toMillis();
        double share = Duration.between(course.from(), at).toMillis() / whole;
        return Math.max(0, Math.min(1, share));
    }

    private ReadingsChart.Dot dot(QuantityCourse.Dot dot) {
        return new ReadingsChart.Dot(
                place(dot.at()),
                unit.shown(dot.value()),
                NINE_OF_TEN * dot.error() * unit.factor(),
                dot.method().continuous()
                        || dot.method().key().contains("photometer")
                        || dot.method().key().contains("laboratory"),
                dot.setAside(),
                words(dot, study.quantity(), zone, units));
    }

    private List<ReadingsChart.Point> points(List<QuantityCourse.Point> points) {
        return points.stream()
                .map(point -> new ReadingsChart.Point(
                        place(point.at()),
                        unit.shown(point.level().value()),
                        unit.shown(point.level().value()
                                - NINE_OF_TEN * point.level().standardError()),
                        unit.shown(point.level().value()
                                + NINE_OF_TEN * point.level().standardError())))
                .toList();
    }

    private ReadingsChart.@Nullable Settles settles() {
        return study.settling() == null
                ? null
                : new ReadingsChart.Settles(
                        place(study.settling().moved()),
                        place(study.settling().until()),
                        SHORT.format(study.settling().until().atZone(zone)));
    }

    private List<ReadingsChart.Step> doses() {
        List<ReadingsChart.Step> steps = new ArrayList<>();
        for (QuantityCourse.Step step : course.doses()) {
            Figure brings = Told.use(study.quantity(), step.brings());
            FigureText text = FigureText.of(brings, units);
            steps.add(new ReadingsChart.Step(
                    place(step.from()), step.brings(), steps.isEmpty() ? "doses bring " + text.line() : text.value()));
        }
        return steps;
    }

    /** Bars of a week, or of so many that they can be told apart, from Monday to Monday. */
    private List<Double> bars() {
        List<Double> bars = new ArrayList<>(List.of(0.0));
        mondays().forEach(monday -> bars.add(place(monday.atStartOfDay(zone).toInstant())));
        bars.add(1.0);
        return bars;
    }

    private List<LocalDate> mondays() {
        LocalDate first = course.from().atZone(zone).toLocalDate();
        LocalDate last = course.to().atZone(zone).toLocalDate();
        long weeks = Math.max(1, (long)
                Math.ceil(Duration.between(course.from(), course.to()).toSeconds() / (7 * DAY) / MOST_BARS));
        List<LocalDate> mondays = new ArrayList<>();
        LocalDate monday = first.plusDays(7 - first.getDayOfWeek().getValue() + 1);
        while (monday.isBefore(last)) {
            mondays.add(monday);
            monday = monday.plusWeeks(weeks);
        }
        return mondays;
    }

    private List<ReadingsChart.Mark> marks() {
        double today = place(course.now());
        List<ReadingsChart.Mark> marks = new ArrayList<>();
        List<LocalDate> mondays = mondays();
        for (int i = 0; i < mondays.size(); i++) {
            double at = place(mondays.get(i).atStartOfDay(zone).toInstant());
            if (Math.abs(at - today) > 0.06 && at > 0.02 && at < 0.97) {
                marks.add(new ReadingsChart.Mark(at, DATE.format(mondays.get(i)), i % 3 != 1));
            }
        }
        marks.add(new ReadingsChart.Mark(today, "today", false));
        return marks;
    }

    /** A reading in words. */
    static String words(QuantityCourse.Dot dot, WaterQuantity quantity, ZoneId zone, UnitSystem units) {
        FigureText read = FigureText.of(Figure.about(Told.level(quantity), dot.value(), dot.error()), units);
        FigureText expected = FigureText.of(Told.level(quantity, dot.expected()), units);
        String surprise = dot.setAside()
                ? "It stands too far off all others and was set aside."
                : Math.abs(dot.off()) < 2 ? "No surprise." : "A little off; test again if the next one is too.";
        return WEEKDAY.format(dot.at().atZone(zone)) + ": read " + read.line() + " by "
                + dot.method().name() + "; " + expected.line() + " was to be expected. " + surprise;
    }

    /** {@code 7.4–8.6 dKH}. */
    static String range(QuantityStudy study, UnitSystem units) {
        TargetRange range = study.range();
        if (range == null) {
            return "";
        }
        FigureText least = FigureText.of(Told.level(study.quantity(), range.least()), units);
        FigureText most = FigureText.of(Told.level(study.quantity(), range.most()), units);
        return least.value() + "–" + most.value() + (most.unit().isEmpty() ? "" : "\u00a0" + most.unit());
    }

    static String day(Instant at, ZoneId zone) {
        return WEEKDAY.format(at.atZone(zone));
    }

    static String time(Instant at, ZoneId zone) {
        return TIME.format(at.atZone(zone));
    }
}
