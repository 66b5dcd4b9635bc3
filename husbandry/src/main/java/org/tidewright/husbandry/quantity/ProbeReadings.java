package org.tidewright.husbandry.quantity;

import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.UUID;
import java.util.stream.Collectors;
import org.tidewright.husbandry.journal.Event;
import org.tidewright.husbandry.journal.Line;
import org.tidewright.husbandry.quantity.ProbeHours.Hour;
import org.tidewright.plan.method.QuantityUnit;
import org.tidewright.plan.method.WaterQuantity;

/**
 * The hours of a probe that are counted as readings by its method. A probe says far more than an estimate can use: its
 * values of a day share one bias and hardly differ by chance. So of each of the last days the means of four hours are
 * counted, six apart, which tell the level from its daily swing; before that of one day a week; and the last hour twice if
 * many values agree on it, else the last two, so that something that goes wrong now is told from a single slip.
 *
 * <p>Each is as wrong as a single value by its method may be, though it is the mean of many: that is careful, and the bias,
 * which is the greater part, does not average away in any case. The numbers of days and hours are this project's own.
 */
final class ProbeReadings {
    private static final int LAST = 2;
    private static final Duration DAILY = Duration.ofDays(90);
    private static final int WEEK = 7;

    /** Values of an hour that are no slip. */
    private static final int MANY = 6;

    private static final long DAY = 86_400;
    private static final int HOURS = 24;
    private static final int APART = 6;

    private ProbeReadings() {}

    /** As lines of a journal that nobody wrote, in order of time; what cannot be meant at all is left out. */
    static List<Line> of(ProbeHours probe, Instant now, ZoneId zone) {
        List<Line> lines = new ArrayList<>();
        List<Hour> sound = sound(probe);
        for (Hour hour : counted(sound, now)) {
            boolean twice = hour.equals(sound.get(sound.size() - 1)) && hour.count() >= MANY;
            for (double at : twice ? new double[] {1 / 3.0, 2 / 3.0} : new double[] {1 / 2.0}) {
                lines.add(line(probe, hour, hour.at(at), now, zone));
            }
        }
        return lines;
    }

    private static List<Hour> sound(ProbeHours probe) {
        WaterQuantity quantity = probe.probe().quantity();
        return probe.hours().stream()
                .filter(hour -> hour.mean() >= quantity.least() && hour.mean() <= quantity.most())
                .toList();
    }

    /** In order of time. */
    static Collection<Hour> counted(List<Hour> hours, Instant now) {
        TreeMap<Instant, Hour> counted = new TreeMap<>();
        Map<Long, List<Hour>> days = hours.stream()
                .collect(Collectors.groupingBy(hour -> Math.floorDiv(hour.from().getEpochSecond(), DAY)));
        days.forEach((day, ofDay) -> {
            boolean late = ofDay.get(0).from().isAfter(now.minus(DAILY));
            if (late || day % WEEK == 0) {
                for (int hour = 0; hour < HOURS; hour += APART) {
                    Hour one = oneOf(ofDay, hour);
                    counted.put(one.from(), one);
                }
            }
        });
        boolean agreed = !hours.isEmpty() && hours.get(hours.size() - 1).count() >= MANY;
        hours.subList(Math.max(0, hours.size() - (agreed ? 1 : LAST)), hours.size())
                .forEach(hour -> counted.put(hour.from(), hour));
        return counted.values();
    }

    /** The hour that is wanted, or the first with a value after it. */
    private static Hour oneOf(List<Hour> hours, int wanted) {
        return hours.stream()
                .min(Comparator.comparingLong(hour -> Math.floorMod(
                        Math.floorMod(hour.from().getEpochSecond(), DAY) / (DAY / HOURS) - wanted, HOURS)))
                .orElseThrow();
    }

    private static Line line(ProbeHours probe, Hour hour, Instant within, Instant now, ZoneId zone) {
        WaterQuantity quantity = probe.probe().quantity();
        QuantityUnit unit = quantity.units().get(0);
        Instant at = within.isAfter(now) ? now : within;
        Event reading = new Event.Reading(
                quantity, unit.fromHeld(hour.mean()), unit, probe.probe().method());
        UUID id = UUID.nameUUIDFromBytes((probe.probe() + " " + within).getBytes(StandardCharsets.UTF_8));
        return new Line(id, 1, at.atZone(zone).toOffsetDateTime(), reading, "", false, at);
    }
}
