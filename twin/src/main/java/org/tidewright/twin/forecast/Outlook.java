package org.tidewright.twin.forecast;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
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
 */
public record Outlook(@Unit("s") double[] time, Map<Quantity, Band> bands) {
    private static final long SEED = 20_260_401;

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
        Ensemble ensemble = new Ensemble(twin.network().parameters(), draws, SEED);
        List<Course> courses = ensemble.map(
                parameters -> new Forecast(twin, parameters).courseAlone(days, samples, quantities, changes), progress);
        Map<Quantity, Band> bands = new EnumMap<>(Quantity.class);
        for (Quantity quantity : quantities) {
            bands.put(quantity, band(courses, quantity));
        }
        double[] shortest = courses.get(0).time();
        for (Course course : courses) {
            shortest = course.time().length < shortest.length ? course.time() : shortest;
        }
        return new Outlook(shortest, bands);
    }

    /** The band of a quantity that was asked for. */
    public Band of(Quantity quantity) {
        Band band = bands.get(quantity);
        if (band == null) {
            throw new IllegalArgumentException(quantity + " was not asked for");
        }
        return band;
    }

    private static Band band(List<Course> courses, Quantity quantity) {
        List<double[]> all = new ArrayList<>();
        courses.forEach(course -> all.add(course.of(quantity)));
        int reached = all.stream().mapToInt(each -> each.length).min().orElse(0);
        double[] low = new double[reached];
        double[] middle = new double[reached];
        double[] high = new double[reached];
        for (int i = 0; i < reached; i++) {
            int sample = i;
            Quantiles at = Quantiles.of(
                    all.stream().mapToDouble(course -> course[sample]).toArray());
            low[i] = at.at(0.05);
            middle[i] = at.at(0.5);
            high[i] = at.at(0.95);
        }
        return new Band(low, middle, high);
    }
}
