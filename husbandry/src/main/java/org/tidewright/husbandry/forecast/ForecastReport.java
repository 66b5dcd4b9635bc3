package org.tidewright.husbandry.forecast;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.tidewright.husbandry.advice.FigureText;
import org.tidewright.husbandry.reef.CoralLore;
import org.tidewright.husbandry.reef.Growth;
import org.tidewright.husbandry.reef.GrowthProgramme;
import org.tidewright.plan.model.Plan;
import org.tidewright.plan.model.UnitSystem;
import org.tidewright.twin.ensemble.Ensemble;
import org.tidewright.twin.forecast.Change;
import org.tidewright.twin.forecast.Course;
import org.tidewright.twin.forecast.Forecast;
import org.tidewright.twin.forecast.Outlook;
import org.tidewright.twin.forecast.Quantity;
import org.tidewright.twin.mechanism.water.OverRim;
import org.tidewright.twin.run.Occurrence;
import org.tidewright.twin.system.SystemTwin;

/**
 * A forecast with what it means.
 *
 * @param samples of each course that comes to its end
 * @param changes what would be done; none for the system as it is run
 * @param growth of the corals on the way, in both courses; none where nothing grows that lays down skeleton, and where the
 *     changes move the corals
 * @param asRun its course
 * @param changed the course with the changes; null without any
 * @param lines every quantity, in the order of {@link Quantity}
 * @param warnings where a band is left, the first in time first
 * @param doubt what many draws of what is not known exactly come to; null where none were made
 */
public record ForecastReport(
        Plan plan,
        double days,
        int samples,
        List<Change> changes,
        List<Change> growth,
        Course asRun,
        @Nullable Course changed,
        List<Line> lines,
        List<Warning> warnings,
        @Nullable Doubt doubt) {
    private static final double DAY = 86_400;

    /**
     * One quantity. All in its unit.
     *
     * @param start at the first midnight
     * @param asRun mean of the last day as it is run
     * @param changed mean of the last day with the changes, the same as {@code asRun} without any
     * @param least along the way of the last course
     * @param most along the way of the last course
     */
    public record Line(Quantity quantity, double start, double asRun, double changed, double least, double most) {
        public double difference() {
            return changed - asRun;
        }
    }

    /**
     * A band that is left.
     *
     * @param day when it is first left, since the first midnight
     * @param value farthest beyond the bound
     * @param bound the bound
     * @param asRunToo whether it is left without the changes as well
     */
    public record Warning(AlarmBand band, double day, double value, double bound, boolean asRunToo) {}

    /**
     * Bands over many draws.
     *
     * @param changed with the changes; null without any
     */
    public record Doubt(Outlook asRun, @Nullable Outlook changed) {
        /** That of the course which is told: with the changes, where there are any. */
        public Outlook told() {
            return changed == null ? asRun : changed;
        }
    }

    /** Runs a system as it is run and with changes. */
    public static ForecastReport of(Plan plan, Forecast forecast, double days, int samples, List<Change> changes) {
        EnumSet<Quantity> all = EnumSet.allOf(Quantity.class);
        List<Change> growth = growth(plan, forecast.twin(), days, changes);
        Course asRun = forecast.course(days, samples, all, growth);
        Course changed = changes.isEmpty() ? null : forecast.course(days, samples, all, both(growth, changes));
        Course last = changed == null ? asRun : changed;
        List<Line> lines = new ArrayList<>();
        for (Quantity quantity : all) {
            double[] course = last.of(quantity);
            lines.add(new Line(
                    quantity,
                    asRun.of(quantity)[0],
                    asRun.meanOfLastDay(quantity),
                    last.meanOfLastDay(quantity),
                    Arrays.stream(course).min().orElse(Double.NaN),
                    Arrays.stream(course).max().orElse(Double.NaN)));
        }
        List<Warning> warnings = new ArrayList<>();
        for (AlarmBand band : AlarmBand.of(plan)) {
            warning(band, last, asRun).ifPresent(warnings::add);
        }
        // Within a day the bands' own order stands: what kills first comes first.
        warnings.sort(Comparator.comparingDouble(warning -> Math.floor(warning.day())));
        return new ForecastReport(
                plan, days, samples, List.copyOf(changes), growth, asRun, changed, lines, warnings, null);
    }

    private static List<Change> growth(Plan plan, SystemTwin twin, double days, List<Change> changes) {
        return GrowthProgramme.isMoved(changes)
                ? List.of()
                : GrowthProgramme.of(twin, Growth.asStated(plan, CoralLore.ofProgram(), twin.volume()), days);
    }

    private static List<Change> both(List<Change> growth, List<Change> changes) {
        List<Change> both = new ArrayList<>(growth);
        both.addAll(changes);
        return both;
    }

    /** The same with bands at the same times: as many draws as are asked for, each run as it is and with the changes. */
    public ForecastReport drawn(SystemTwin twin, int draws, Ensemble.Progress progress) {
        List<List<Change>> whatIfs = changes.isEmpty() ? List.of(growth) : List.of(growth, both(growth, changes));
        List<Outlook> outlooks =
                Outlook.ofEach(twin, days, samples, EnumSet.allOf(Quantity.class), whatIfs, draws, progress);
        Doubt doubted = new Doubt(outlooks.get(0), changes.isEmpty() ? null : outlooks.get(1));
        return new ForecastReport(plan, days, samples, changes, growth, asRun, changed, lines, warnings, doubted);
    }

    private static Optional<Warning> warning(AlarmBand band, Course course, Course asRun) {
        double[] values = course.of(band.quantity());
        int first = 0;
        while (first < values.length && !band.isBroken(values[first])) {
            first++;
        }
        if (first == values.length) {
            return Optional.empty();
        }
        boolean above = values[first] > band.high();
        double farthest = above
                ? Arrays.stream(values).max().orElseThrow()
                : Arrays.stream(values).min().orElseThrow();
        boolean asRunToo = Arrays.stream(asRun.of(band.quantity())).anyMatch(band::isBroken);
        return Optional.of(
                new Warning(band, course.time()[first] / DAY, farthest, above ? band.high() : band.low(), asRunToo));
    }

    /** Whether every quantity stays within its bounds and the water in its vessels to the end. */
    public boolean holds() {
        return warnings.isEmpty() && overflows().isEmpty() && told().brokenOff() == null;
    }

    /** The times a vessel came to its rim, in the course that is told. */
    public List<Occurrence> overflows() {
        return told().events().stream()
                .filter(happened -> OverRim.isEvent(happened.event()))
                .toList();
    }

    /** The course with the changes, where there are any. */
    private Course told() {
        return changed == null ? asRun : changed;
    }

    // ── sentences ──

    /** What to do or expect first, and why. */
    public String lead(UnitSystem units) {
        List<Occurrence> overflows = overflows();
        if (!overflows.isEmpty()) {
            return "Do not let it come to this: on day "
                    + number(Math.floor(overflows.get(0).time() / DAY), 0) + " "
                    + overflows.get(0).event()
                    + ", and what goes over it stands on the floor. Keep plugs and cables above"
                    + " it.";
        }
        Course last = told();
        if (last.brokenOff() != null) {
            return "Do not let it come to this: after " + days(last.time()[last.time().length - 1] / DAY)
                    + " the system is in a state the twin knows no law for.";
        }
        Optional<Warning> own = warnings.stream()
                .filter(warning -> changed == null || !warning.asRunToo())
                .findFirst();
        if (own.isPresent()) {
            return alarm(own.get(), units);
        }
        return changed == null ? expectation(units) : effect(units);
    }

    /** A number of days, or hours where they are few. */
    public static String days(double days) {
        double hours = 24 * days;
        return hours < 48 ? number(hours, 0) + "\u00a0h" : number(days, 0) + "\u00a0days";
    }

    private String alarm(Warning warning, UnitSystem units) {
        Quantity quantity = warning.band().quantity();
        String act = changed == null ? "Act before day " : "Do not leave it so: on day ";
        return act + number(Math.floor(warning.day()), 0) + " " + quantity.words() + " passes "
                + told(quantity, warning.bound(), units) + " and comes to " + told(quantity, warning.value(), units)
                + " ("
                + warning.band().reason() + ").";
    }

    private String expectation(UnitSystem units) {
        Line nitrate = line(Quantity.NITRATE);
        Line phosphate = line(Quantity.PHOSPHATE);
        Line alkalinity = line(Quantity.ALKALINITY);
        return "Go on as you do: after " + days(days) + " expect nitrate near "
                + told(nitrate.quantity(), nitrate.asRun(), units) + ", phosphate near "
                + told(phosphate.quantity(), phosphate.asRun(), units) + " and alkalinity near "
                + told(alkalinity.quantity(), alkalinity.asRun(), units) + ".";
    }

    private String effect(UnitSystem units) {
        Line most = lines.stream()
                .max(Comparator.comparingDouble(line -> Math.abs(line.difference()) / notable(line.quantity())))
                .orElseThrow();
        if (Math.abs(most.difference()) < notable(most.quantity())) {
            return "Do not expect to see it: after " + days(days)
                    + " no quantity differs by more than a test could tell.";
        }
        Quantity quantity = most.quantity();
        return "Expect " + quantity.words() + " near " + told(quantity, most.changed(), units) + " after "
                + days(days) + ", " + difference(quantity, Math.abs(most.difference()), units)
                + (most.difference() > 0 ? " more" : " less") + " than without the change.";
    }

    /** A difference that usual tests can tell; common practice. */
    private static double notable(Quantity quantity) {
        return switch (quantity) {
            case TEMPERATURE, SALINITY -> 0.5;
            case PH -> 0.05;
            case OXYGEN -> 0.3;
            case OXYGEN_SATURATION -> 5;
            case CARBON_DIOXIDE, CARBON_DIOXIDE_OF_ROOM -> 150;
            case ALKALINITY -> 0.3;
            case CALCIUM -> 15;
            case MAGNESIUM -> 40;
            case ARAGONITE_SATURATION -> 0.5;
            case AMMONIA, NITRITE -> 0.05;
            case FREE_AMMONIA -> 0.005;
            case NITRATE -> 2;
            case PHOSPHATE -> 0.03;
            case LIGHT, FISH -> 1e9;
        };
    }

    private Line line(Quantity quantity) {
        return lines.stream()
                .filter(line -> line.quantity() == quantity)
                .findFirst()
                .orElseThrow();
    }

    /** A value in the reader's units. */
    public static String told(Quantity quantity, double value, UnitSystem units) {
        return number(shown(quantity, value, units), quantity.decimals()) + unitAfter(quantity, units);
    }

    private static String difference(Quantity quantity, double value, UnitSystem units) {
        double shown = quantity == Quantity.TEMPERATURE && units == UnitSystem.US ? 1.8 * value : value;
        return number(shown, quantity.decimals()) + unitAfter(quantity, units);
    }

    /** The number of a value in the reader's units: only temperature differs. */
    public static double shown(Quantity quantity, double value, UnitSystem units) {
        return quantity == Quantity.TEMPERATURE && units == UnitSystem.US ? 1.8 * value + 32 : value;
    }

    /** The symbol of a quantity's unit for the reader. */
    public static String unit(Quantity quantity, UnitSystem units) {
        return quantity == Quantity.TEMPERATURE && units == UnitSystem.US ? "°F" : quantity.unit();
    }

    private static String unitAfter(Quantity quantity, UnitSystem units) {
        String unit = unit(quantity, units);
        return unit.isEmpty() ? "" : "\u00a0" + unit;
    }

    private static String number(double value, int decimals) {
        return FigureText.number(value, decimals);
    }

    /** What a change says, as a keeper reads it. */
    public static String words(Change change, UnitSystem units) {
        String from = change.from() == 0
                ? ""
                : String.format(
                        Locale.ROOT,
                        " from day %d %02d:%02d",
                        (int) (change.from() / DAY),
                        (int) (change.from() % DAY / 3600),
                        (int) (change.from() % 3600 / 60));
        String lasts = Double.isFinite(change.lasts()) ? " for " + number(change.lasts() / 3600, 1) + "\u00a0h" : "";
        double initial = change.lever().setting().initial();
        String value = switch (change.lever().kind()) {
            case SWITCH, FLOAT_SWITCH -> change.value() > 1 ? "stuck on" : change.value() > 0 ? "on" : "off";
            case FACTOR -> number(100 * change.value(), 0) + "\u00a0%";
            case AMOUNT ->
                change.lever().unit().equals("degC")
                        ? told(Quantity.TEMPERATURE, change.value(), units)
                        : initial > 0 ? number(100 * change.value() / initial, 0) + "\u00a0% of the plan's" : "set";
        };
        return change.lever().name() + " " + value + from + lasts;
    }
}
