package org.tidewright.twin.forecast;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.IntStream;
import org.tidewright.numerics.sample.Quantiles;
import org.tidewright.seawater.unit.Unit;
import org.tidewright.twin.ensemble.Ensemble;
import org.tidewright.twin.rehearsal.Band;
import org.tidewright.twin.system.SystemTwin;

/**
 * A forecast with its doubt: many courses of the same system, each with other values of what is not known exactly. It ends
 * where the first of them does.
 *
 * @param time of the samples, since the first midnight
 * @param bands of each quantity, in its unit: of 100 draws 5 lie below, 50, and 95
 * @param lastDay the same of the mean of each draw's last day
 * @param draws how many
 * @param endedEarly how many came to a state no law of the twin holds for
 */
public record Outlook(
        @Unit("s") double[] time, Map<Quantity, Band> bands, Map<Quantity, Range> lastDay, int draws, int endedEarly) {
    private static final long SEED = 20_260_401;

    /** Of 100 draws 5 lie below, 50, and 95; in the quantity's unit. */
    public record Range(
            @Unit("*") double low,
            @Unit("*") double middle,
            @Unit("*") double high) {
        /** Of draws; positive infinity stands for never. */
        public static Range of(@Unit("*") double[] values) {
            Quantiles at = Quantiles.of(values);
            return new Range(at.at(0.05), at.at(0.5), at.at(0.95));
        }
    }

    /**
     * The outlook of a twin.
     *
     * @param draws 200 know the ends of a band to about a twentieth of its width
     */
    public static Outlook of(
            SystemTwin twin,
            double days,
            int samples,
            Set<Quantity> quantities,
            List<Change> changes,
            int draws,
            Ensemble.Progress progress) {
        return ofEach(twin, days, samples, quantities, List.of(changes), draws, progress)
                .get(0);
    }

    /** The outlooks of several lists of changes over the same draws. */
    public static List<Outlook> ofEach(
            SystemTwin twin,
            double days,
            int samples,
            Set<Quantity> quantities,
            List<List<Change>> whatIfs,
            int draws,
            Ensemble.Progress progress) {
        Ensemble ensemble = new Ensemble(twin.network().parameters(), draws, SEED);
        List<List<Course>> byDraw = ensemble.map(
                parameters -> {
                    Forecast forecast = new Forecast(twin, parameters);
                    return whatIfs.stream()
                            .map(changes -> forecast.courseAlone(days, samples, quantities, changes))
                            .toList();
                },
                progress);
        return IntStream.range(0, whatIfs.size())
                .mapToObj(whatIf ->
                        of(byDraw.stream().map(courses -> courses.get(whatIf)).toList(), quantities))
                .toList();
    }

    /** Of courses that were run already, one a draw. */
    public static Outlook of(List<Course> courses, Set<Quantity> quantities) {
        Map<Quantity, Band> bands = new EnumMap<>(Quantity.class);
        Map<Quantity, Range> lastDay = new EnumMap<>(Quantity.class);
        for (Quantity quantity : quantities) {
            bands.put(quantity, band(courses, quantity));
            lastDay.put(
                    quantity,
                    Range.of(courses.stream()
                            .mapToDouble(course -> course.meanOfLastDay(quantity))
                            .toArray()));
        }
        double[] shortest = courses.get(0).time();
        int endedEarly = 0;
        for (Course course : courses) {
            shortest = course.time().length < shortest.length ? course.time() : shortest;
            endedEarly += course.brokenOff() == null ? 0 : 1;
        }
        return new Outlook(shortest, bands, lastDay, courses.size(), endedEarly);
    }

    /** The band of a quantity that was asked for. */
    public Band of(Quantity quantity) {
        Band band = bands.get(quantity);
        if (band == null) {
            throw new IllegalArgumentException(quantity + " was not asked for");
        }
        return band;
    }

    /** The range of the last day of a quantity that was asked for. */
    public Range lastDay(Quantity quantity) {
        Range range = lastDay.get(quantity);
        if (range == null) {
            throw new IllegalArgumentException(quantity + " was not asked for");
        }
        return range;
    }

    private static Band band(List<Course> courses, Quantity quantity) {
        List<double[]> all = courses.stream().map(course -> course.of(quantity)).toList();
        int reached = all.stream().mapToInt(each -> each.length).min().orElse(0);
        double[] low = new double[reached];
        double[] middle = new double[reached];
        double[] high = new double[reached];
        for (int i = 0; i < reached; i++) {
            int sample = i;
            Range range =
                    Range.of(all.stream().mapToDouble(course -> course[sample]).toArray());
            low[i] = range.low();
            middle[i] = range.middle();
            high[i] = range.high();
        }
        return new Band(low, middle, high);
    }
}
