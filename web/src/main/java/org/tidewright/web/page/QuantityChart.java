package org.tidewright.web.page;

import java.time.Duration;
import java.time.Instant;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;
import org.tidewright.husbandry.advice.Figure;
import org.tidewright.husbandry.advice.FigureText;
import org.tidewright.husbandry.advice.Measure;
import org.tidewright.husbandry.dosing.Settling;
import org.tidewright.husbandry.limit.TargetRange;
import org.tidewright.husbandry.quantity.QuantityCourse;
import org.tidewright.husbandry.quantity.QuantityStudy;
import org.tidewright.husbandry.quantity.Told;
import org.tidewright.plan.method.WaterQuantity;
import org.tidewright.plan.model.UnitSystem;
import org.tidewright.web.chart.ReadingsChart;
import org.tidewright.web.chart.Thinned;

/** From a study to what its chart draws: the reader's units, places on the scale of time, words. */
final class QuantityChart {
    /** Nine of ten normal values lie within so many standard errors. */
    private static final double NINE_OF_TEN = 1.645;

    /** Readings that are drawn one by one: at a width of 390 pixels their bars would else run into each other. */
    private static final int MOST_DOTS = 120;

    /** What stands too far off is never thinned; but of a log that is nothing else, only what stands farthest. */
    private static final int MOST_SET_ASIDE = 40;

    private static final int STROKES = 80;

    /** Share of the width of a phone that a name on the scale of time takes. */
    private static final double BESIDE = 0.18;

    private static final int POINTS = 200;
    private static final int MOST_STEPS = 60;
    private static final DateTimeFormatter WEEKDAY = DateTimeFormatter.ofPattern("EEEE d MMMM", Locale.ENGLISH);
    private static final DateTimeFormatter DAY_READ = DateTimeFormatter.ofPattern("EEEE d MMMM yyyy", Locale.ENGLISH);
    private static final DateTimeFormatter SHORT = DateTimeFormatter.ofPattern("EEE d MMM", Locale.ENGLISH);
    private static final DateTimeFormatter TIME = DateTimeFormatter.ofPattern("EEE d MMM yyyy, HH:mm", Locale.ENGLISH);
    private static final DateTimeFormatter DATE = DateTimeFormatter.ofPattern("d MMMM yyyy", Locale.ENGLISH);

    private final QuantityStudy study;
    private final QuantityCourse course;
    private final ProbeBand probe;
    private final ChartSpan span;
    private final ZoneId zone;
    private final UnitSystem units;
    private final Measure.Unit unit;

    private QuantityChart(QuantityStudy study, ProbeBand probe, ChartSpan span, ZoneId zone, UnitSystem units) {
        this.study = study;
        this.probe = probe;
        this.span = span;
        this.zone = zone;
        this.units = units;
        course = study.course().within(span.start(zone), span.end(zone));
        unit = Told.level(study.quantity()).unit(units);
    }

    static ReadingsChart.Content of(
            QuantityStudy study, ProbeBand probe, ChartSpan span, ZoneId zone, UnitSystem units) {
        return new QuantityChart(study, probe, span, zone, units).content();
    }

    private ReadingsChart.Content content() {
        TargetRange range = study.range();
        boolean many = course.readings().size() > MOST_DOTS;
        CalendarScale scale = CalendarScale.of(span.from(), span.to().plusDays(span.ahead()));
        double today = inside(course.now()) ? place(course.now()) : Double.NaN;
        return new ReadingsChart.Content(
                label(),
                (many ? setAside() : course.readings()).stream().map(this::dot).toList(),
                many ? strokes() : List.of(),
                probe.drawn(unit),
                course.readings().isEmpty() ? probe.told(study.quantity(), zone, units) : List.of(),
                points(course.past()),
                points(course.ahead()),
                range == null ? Double.NaN : unit.shown(range.least()),
                range == null ? Double.NaN : unit.shown(range.most()),
                "range " + range(study, units),
                settles(),
                "doses bring, "
                        + FigureText.of(Told.use(study.quantity(), 1), units).unit(),
                doses(),
                today,
                bars(scale),
                marks(scale, today));
    }

    private String label() {
        return study.quantity().words() + " from " + DATE.format(span.from()) + " to "
                + DATE.format(span.to().plusDays(span.ahead())) + ": "
                + course.readings().size() + (course.readings().size() == 1 ? " reading" : " readings")
                + (probe.isEmpty() ? "" : ", what " + probe.words() + " said")
                + ", the estimate with its band, and what is to be expected. The table below holds every reading;"
                + " use the left and right arrow keys to step through them, plus and minus to look closer or wider, Page Up"
                + " and Page Down to go back and forward.";
    }

    private boolean inside(Instant at) {
        return !at.isBefore(course.from()) && !at.isAfter(course.to());
    }

    private double place(Instant at) {
        return place(at, course.from(), course.to());
    }

    /** As a share of the width, held between its ends. */
    static double place(Instant at, Instant from, Instant to) {
        double share = (double) Duration.between(from, at).toMillis()
                / Duration.between(from, to).toMillis();
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

    private List<QuantityCourse.Dot> setAside() {
        return course.readings().stream()
                .filter(QuantityCourse.Dot::setAside)
                .sorted(Comparator.comparingDouble(dot -> -Math.abs(dot.off())))
                .limit(MOST_SET_ASIDE)
                .toList();
    }

    private List<ReadingsChart.Stroke> strokes() {
        List<Thinned.Value> values = course.readings().stream()
                .filter(dot -> !dot.setAside())
                .map(dot -> Thinned.Value.of(place(dot.at()), dot.value()))
                .toList();
        return Thinned.of(values, STROKES).stream().map(this::stroke).toList();
    }

    private ReadingsChart.Stroke stroke(Thinned.Column column) {
        return new ReadingsChart.Stroke(
                column.at(),
                unit.shown(column.least()),
                unit.shown(column.mean()),
                unit.shown(column.most()),
                days(column, course.from(), course.to(), zone) + ": "
                        + column.count() + (column.count() == 1 ? " reading, " : " readings, ")
                        + ProbeBand.spread(column, study.quantity(), units) + ".");
    }

    /** {@code Mon 3 Mar 2025 to Thu 6 Mar 2025}. */
    static String days(Thinned.Column column, Instant from, Instant to, ZoneId zone) {
        DateTimeFormatter day = DateTimeFormatter.ofPattern("EEE d MMM yyyy", Locale.ENGLISH);
        double whole = Duration.between(from, to).toMillis();
        String first =
                day.format(from.plusMillis(Math.round(column.from() * whole)).atZone(zone));
        String last =
                day.format(from.plusMillis(Math.round(column.to() * whole)).atZone(zone));
        return first.equals(last) ? first : first + " to " + last;
    }

    /** No more than can be told apart; of those that fall together the band holds all. */
    private List<ReadingsChart.Point> points(List<QuantityCourse.Point> points) {
        int apart = (int) Math.ceil(points.size() / (double) POINTS);
        List<ReadingsChart.Point> drawn = new ArrayList<>();
        for (int i = 0; i < points.size(); i += apart) {
            drawn.add(point(points.subList(i, Math.min(points.size(), i + apart))));
        }
        if (apart > 1) {
            drawn.add(point(points.subList(points.size() - 1, points.size())));
        }
        return drawn;
    }

    private ReadingsChart.Point point(List<QuantityCourse.Point> together) {
        double low = Double.POSITIVE_INFINITY;
        double high = Double.NEGATIVE_INFINITY;
        for (QuantityCourse.Point point : together) {
            low = Math.min(
                    low, point.level().value() - NINE_OF_TEN * point.level().standardError());
            high = Math.max(
                    high, point.level().value() + NINE_OF_TEN * point.level().standardError());
        }
        return new ReadingsChart.Point(
                place(together.get(0).at()),
                unit.shown(together.get(0).level().value()),
                unit.shown(low),
                unit.shown(high));
    }

    private ReadingsChart.@Nullable Settles settles() {
        Settling settling = study.settling();
        return settling == null
                        || !settling.moved().isBefore(course.to())
                        || !settling.until().isAfter(course.from())
                ? null
                : new ReadingsChart.Settles(
                        place(settling.moved()),
                        place(settling.until()),
                        SHORT.format(settling.until().atZone(zone)));
    }

    /** Where doses were moved too often to be told apart, each stretch of the width keeps the last of its moves. */
    private List<ReadingsChart.Step> doses() {
        List<ReadingsChart.Step> steps = new ArrayList<>();
        int last = -1;
        for (QuantityCourse.Step step : course.doses()) {
            FigureText text =
                    FigureText.of(Told.use(study.quantity(), step.brings().value()), units);
            double at = place(step.from());
            int column = course.doses().size() > MOST_STEPS ? (int) (MOST_STEPS * at) : last + 1;
            if (column == last) {
                steps.remove(steps.size() - 1);
            }
            last = column;
            steps.add(new ReadingsChart.Step(at, step.brings().value(), text.value()));
        }
        return steps;
    }

    private List<Double> bars(CalendarScale scale) {
        List<Double> bars = new ArrayList<>(List.of(0.0));
        scale.beginnings().forEach(day -> bars.add(place(day.atStartOfDay(zone).toInstant())));
        bars.add(1.0);
        return bars;
    }

    private List<ReadingsChart.Mark> marks(CalendarScale scale, double today) {
        List<ReadingsChart.Mark> marks = new ArrayList<>();
        for (int i = 0; i < scale.beginnings().size(); i++) {
            double at = place(scale.beginnings().get(i).atStartOfDay(zone).toInstant());
            if (!(Math.abs(at - today) <= 0.06) && at > 0.02 && at < 0.97) {
                marks.add(
                        new ReadingsChart.Mark(at, scale.names().get(i), i % 3 != 1 || Math.abs(at - today) < BESIDE));
            }
        }
        if (!Double.isNaN(today)) {
            marks.add(new ReadingsChart.Mark(today, "today", false));
        }
        return marks;
    }

    /** A reading in words. */
    static String words(QuantityCourse.Dot dot, WaterQuantity quantity, ZoneId zone, UnitSystem units) {
        FigureText read = FigureText.of(Figure.about(Told.level(quantity), dot.value(), dot.error()), units);
        FigureText expected = FigureText.of(Told.level(quantity, dot.expected()), units);
        String surprise = dot.setAside()
                ? "It stands too far off all others and was set aside."
                : Math.abs(dot.off()) < 2 ? "No surprise." : "A little off; test again if the next one is too.";
        return DAY_READ.format(dot.at().atZone(zone)) + ": read " + read.line() + " by "
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
