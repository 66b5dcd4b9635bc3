package org.tidewright.web.chart;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.tidewright.husbandry.advice.Doubt;
import org.tidewright.husbandry.advice.Figure;
import org.tidewright.husbandry.advice.FigureText;
import org.tidewright.husbandry.advice.Measure;
import org.tidewright.husbandry.limit.Limit;
import org.tidewright.husbandry.rehearsal.Crossing;
import org.tidewright.husbandry.rehearsal.OutageReport;
import org.tidewright.husbandry.rehearsal.Trace;
import org.tidewright.husbandry.rehearsal.WaterReport;
import org.tidewright.plan.model.UnitSystem;
import org.tidewright.twin.rehearsal.WaterMovement;

/**
 * A quantity to chart, already in the reader's unit.
 *
 * @param id of its trace
 * @param time seconds, rising
 * @param bounds what it must not pass, in the reader's unit
 * @param standardError told beside every value, {@code "± 3"}; empty where the band tells it
 */
public record Curve(
        String id,
        String title,
        Measure.Unit unit,
        double[] time,
        double[] low,
        double[] middle,
        double[] high,
        List<Bound> bounds,
        String standardError) {

    /** Id of the room left in the sump. */
    public static final String ROOM = "room";

    /**
     * A limit on a chart.
     *
     * @param words what it marks
     * @param crossing when it is met; null where nobody asked
     */
    public record Bound(
            String words,
            double value,
            boolean forbiddenBelow,
            @Nullable Crossing crossing) {}

    /** A temperature or a gas, with the crossings of its limits. */
    public static Curve of(Trace trace, List<Crossing> crossings, UnitSystem units) {
        Measure.Unit unit = trace.measure().unit(units);
        List<Bound> bounds = new ArrayList<>();
        for (Limit limit : trace.limits()) {
            Crossing met = crossings.stream()
                    .filter(c -> c.trace().equals(trace.id()) && c.limit().equals(limit))
                    .findFirst()
                    .orElse(null);
            bounds.add(new Bound(limit.words(), unit.shown(limit.value()), limit.forbiddenBelow(), met));
        }
        return new Curve(
                trace.id(),
                trace.title(),
                unit,
                trace.time(),
                shown(unit, trace.band().low()),
                shown(unit, trace.band().middle()),
                shown(unit, trace.band().high()),
                bounds,
                "");
    }

    /** The room left in the sump; its doubt is known at the end, so the band begins where the water has come to rest. */
    public static @Nullable Curve room(WaterReport water, double seconds, UnitSystem units) {
        WaterMovement movement = water.movement();
        if (movement == null || water.roomLeft().length == 0) {
            return null;
        }
        Measure.Unit unit = Measure.VOLUME.unit(units);
        int n = water.roomLeft().length;
        double[] time = Arrays.copyOf(movement.time(), n + 2);
        double[] middle = Arrays.copyOf(shown(unit, water.roomLeft()), n + 2);
        time[n] = time[n - 1] + 0.5;
        time[n + 1] = Math.max(seconds, time[n] + 1);
        middle[n] = middle[n - 1];
        middle[n + 1] = middle[n - 1];
        double[] low = middle.clone();
        double[] high = middle.clone();
        Figure room = water.room();
        if (room != null) {
            double[] range = range(room, unit);
            for (int i = n; i < n + 2; i++) {
                low[i] = range[0];
                high[i] = range[1];
            }
        }
        List<Bound> bounds = List.of(new Bound("the rim", 0, true, null));
        String error = room != null && room.doubt() instanceof Doubt.StandardError
                ? FigureText.of(room, units).doubt()
                : "";
        return new Curve(ROOM, "Room left in the sump", unit, time, low, middle, high, bounds, error);
    }

    /** All curves of a rehearsal, the water first. */
    public static List<Curve> all(OutageReport report, double seconds, UnitSystem units) {
        List<Curve> curves = new ArrayList<>();
        Curve room = room(report.water(), seconds, units);
        if (room != null) {
            curves.add(room);
        }
        for (Trace trace : report.traces()) {
            curves.add(of(trace, report.crossings(), units));
        }
        return curves;
    }

    /** A value of this curve in words, {@code 22 °C}. */
    String told(double shown) {
        int decimals = Math.abs(shown - Math.rint(shown)) < 1e-6 ? 0 : unit.decimals();
        return FigureText.number(shown, decimals) + "\u00a0" + unit.symbol();
    }

    /** 5th and 95th of 100 draws. */
    private static double[] range(Figure figure, Measure.Unit unit) {
        double low = figure.value();
        double high = figure.value();
        if (figure.doubt() instanceof Doubt.StandardError error) {
            low -= 1.645 * error.size();
            high += 1.645 * error.size();
        } else if (figure.doubt() instanceof Doubt.Range given) {
            low = given.low();
            high = given.high();
        }
        return new double[] {unit.shown(low), unit.shown(high)};
    }

    private static double[] shown(Measure.Unit unit, double[] values) {
        return Arrays.stream(values).map(unit::shown).toArray();
    }

    /** The sample at a time, between its neighbours. */
    static double at(double[] time, double[] values, double when) {
        int i = Arrays.binarySearch(time, when);
        if (i >= 0) {
            return values[i];
        }
        int next = -i - 1;
        if (next == 0) {
            return values[0];
        } else if (next == time.length) {
            return values[time.length - 1];
        }
        double share = (when - time[next - 1]) / (time[next] - time[next - 1]);
        return values[next - 1] + share * (values[next] - values[next - 1]);
    }
}
