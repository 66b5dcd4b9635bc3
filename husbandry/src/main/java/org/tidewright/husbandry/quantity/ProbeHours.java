package org.tidewright.husbandry.quantity;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.TreeMap;
import org.tidewright.husbandry.journal.ProbeLog;
import org.tidewright.husbandry.journal.ProbeLog.Bin;
import org.tidewright.husbandry.journal.ProbeLog.Probe;
import org.tidewright.husbandry.journal.Span;
import org.tidewright.plan.method.WaterQuantity;
import org.tidewright.seawater.unit.Unit;

/**
 * What one probe said of late, hour for hour.
 *
 * @param hours in order of time, those without a value left out; never empty
 */
public record ProbeHours(Probe probe, List<Hour> hours) {
    /** As far back as noise is learnt from: older values change no estimate. */
    private static final Duration LOOKED_BACK = Duration.ofDays(730);

    /** A probe that was silent for so long is not asked any more: this project's own. */
    private static final Duration SILENT = Duration.ofDays(1);

    private static final long HOUR = 3600;

    /** One hour of UTC: how many values there are of it, and their mean. */
    public record Hour(Instant from, int count, @Unit("*") double mean) {
        /** A time within it. */
        Instant at(@Unit("1") double share) {
            return from.plusSeconds(Math.round(share * HOUR));
        }
    }

    /** Of every probe of a system that said something in the last two years, in order of their names. */
    public static List<ProbeHours> of(ProbeLog log, String system, Instant now) {
        Span span = new Span(now.minus(LOOKED_BACK), now.plusMillis(1));
        int most = (int) LOOKED_BACK.toHours() + 2;
        List<ProbeHours> probes = new ArrayList<>();
        for (Probe probe : log.probes(system)) {
            List<Hour> hours = hours(log.bins(system, probe, span, most));
            if (!hours.isEmpty()) {
                probes.add(new ProbeHours(probe, hours));
            }
        }
        return probes;
    }

    /** Where values came seldom they are given one by one. */
    private static List<Hour> hours(List<Bin> bins) {
        TreeMap<Long, double[]> sums = new TreeMap<>();
        for (Bin bin : bins) {
            double[] sum = sums.computeIfAbsent(
                    Math.floorDiv(bin.from().getEpochSecond(), HOUR) * HOUR, none -> new double[2]);
            sum[0] += bin.count() * bin.mean();
            sum[1] += bin.count();
        }
        List<Hour> hours = new ArrayList<>(sums.size());
        sums.forEach((from, sum) -> hours.add(new Hour(Instant.ofEpochSecond(from), (int) sum[1], sum[0] / sum[1])));
        return hours;
    }

    /** The one to go by where several measure a quantity: whichever spoke last, of those the one with most hours. */
    static Optional<ProbeHours> leading(List<ProbeHours> probes, WaterQuantity quantity) {
        return probes.stream()
                .filter(each -> each.probe().quantity() == quantity)
                .max(Comparator.comparing(ProbeHours::last)
                        .thenComparing(each -> each.hours().size()));
    }

    /** Beginning of the last hour in which it said something. */
    Instant last() {
        return hours.get(hours.size() - 1).from();
    }

    /** Whether it still speaks. */
    boolean isLive(Instant now) {
        return last().plus(SILENT).isAfter(now);
    }

    /** The means of the hours since a time. */
    double[] since(Instant time) {
        return hours.stream()
                .filter(hour -> !hour.from().isBefore(time))
                .mapToDouble(Hour::mean)
                .toArray();
    }
}
