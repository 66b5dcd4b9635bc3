package org.tidewright.app.demo;

import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalTime;
import java.time.OffsetDateTime;
import java.time.ZonedDateTime;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import java.util.random.RandomGenerator;
import org.tidewright.husbandry.journal.Draft;
import org.tidewright.husbandry.journal.Event;
import org.tidewright.husbandry.journal.ProbeLog.Probe;
import org.tidewright.husbandry.journal.ProbeLog.Value;
import org.tidewright.numerics.sample.Draws;
import org.tidewright.plan.method.QuantityUnit;
import org.tidewright.plan.method.TestMethod;
import org.tidewright.plan.method.TestMethods;
import org.tidewright.plan.method.WaterQuantity;
import org.tidewright.plan.model.Plan;
import org.tidewright.twin.forecast.Change;
import org.tidewright.twin.forecast.Course;
import org.tidewright.twin.forecast.Forecast;
import org.tidewright.twin.forecast.Quantity;
import org.tidewright.twin.system.Lever;
import org.tidewright.twin.system.Levers;

/**
 * Seventy days of an invented log: what the twin of the plan went through, read off by test kits with their errors, with one
 * gross slip, and by two probes every hour. The doses of bicarbonate and calcium were lowered four weeks ago, and raised again three days ago.
 */
public final class DemoJournal {
    private static final int DAYS = 70;
    private static final int SAMPLES_A_DAY = 24;
    private static final long SEED = 11;
    private static final LocalTime TESTED_AT = LocalTime.of(7, 40);
    private static final double MILLILITRE_A_DAY = 1e-6 / 86_400;

    /** Days since the beginning on which both doses were moved, and what they were before, in parts of the plan's. */
    private static final double[][] DOSES = {{0, 0.95}, {40, 0.75}, {67, 1}};

    private static final int SLIP = 48;

    /** An hour's mean scatters less than a single value. */
    private static final double SCATTER_OF_PROBE = 0.3;

    private final ZonedDateTime begins;
    private final Course course;
    private final RandomGenerator dice = new Draws(SEED, 0).stream("readings");
    private final Map<String, Double> biases = new HashMap<>();
    private final RandomGenerator noise = new Draws(SEED, 0).stream("probes");
    private final List<Draft> drafts = new ArrayList<>();
    private final Map<Probe, List<Value>> probes = new LinkedHashMap<>();

    /** What there is up to a time. */
    public record Invented(List<Draft> lines, Map<Probe, List<Value>> probes) {}

    private DemoJournal(ZonedDateTime begins, Course course) {
        this.begins = begins;
        this.course = course;
    }

    /** The log of a plan that doses bicarbonate and calcium, up to a time. */
    public static Invented of(Plan plan, ZonedDateTime now) {
        Forecast forecast = Forecast.of(plan);
        Levers levers = forecast.twin().levers();
        List<Lever> moved = List.of(levers.get("bicarbonate dose"), levers.get("calcium dose"));
        List<Change> changes = new ArrayList<>();
        for (double[] dose : DOSES) {
            moved.forEach(lever -> changes.add(new Change(
                    lever, dose[1] * lever.setting().initial(), dose[0] * 86_400, Double.POSITIVE_INFINITY)));
        }
        EnumSet<Quantity> followed = EnumSet.of(
                Quantity.ALKALINITY,
                Quantity.CALCIUM,
                Quantity.MAGNESIUM,
                Quantity.NITRATE,
                Quantity.PHOSPHATE,
                Quantity.SALINITY,
                Quantity.TEMPERATURE,
                Quantity.PH);
        Course course = forecast.course(DAYS + 1, (DAYS + 1) * SAMPLES_A_DAY + 1, followed, changes);
        ZonedDateTime begins = now.toLocalDate().minusDays(DAYS).atStartOfDay(now.getZone());
        DemoJournal journal = new DemoJournal(begins, course);
        journal.write(moved);
        journal.probe(WaterQuantity.TEMPERATURE, now.toInstant());
        journal.probe(WaterQuantity.PH, now.toInstant());
        OffsetDateTime until = now.toOffsetDateTime();
        return new Invented(
                journal.drafts.stream()
                        .filter(draft -> draft.at().isBefore(until))
                        .toList(),
                journal.probes);
    }

    private void write(List<Lever> moved) {
        line(
                0,
                LocalTime.of(7, 0),
                new Event.Observation(
                        "This log is invented: the twin of this plan made it, with the errors of test kits and probes, to show the pages.",
                        null));
        for (int i = 1; i < DOSES.length; i++) {
            for (Lever lever : moved) {
                double plans = lever.setting().initial();
                line(
                        (int) DOSES[i][0],
                        LocalTime.of(0, 0),
                        new Event.LeverMoved(
                                lever.name(),
                                lever.unit(),
                                rounded(DOSES[i - 1][1] * plans, MILLILITRE_A_DAY),
                                rounded(DOSES[i][1] * plans, MILLILITRE_A_DAY)));
            }
        }
        for (int day = 0; day <= DAYS; day++) {
            readingsOf(day);
            if (day % 7 == 6) {
                line(day, LocalTime.of(10, 0), new Event.WorkDone("clean the skimmer cup", Duration.ofMinutes(6)));
            }
        }
    }

    private void readingsOf(int day) {
        if (day % 7 == 0 || day % 7 == 3) {
            read(day, WaterQuantity.ALKALINITY, day % 21 == 3 ? "photometer" : "endpoint_titration");
        }
        if (day == SLIP) {
            QuantityUnit degrees = WaterQuantity.ALKALINITY.units().get(0);
            line(day, TESTED_AT, new Event.Reading(WaterQuantity.ALKALINITY, 9.4, degrees, "endpoint_titration"));
        }
        if (day % 7 == 0) {
            read(day, WaterQuantity.CALCIUM, "titration");
            read(day, WaterQuantity.SALINITY, "refractometer_seawater");
            read(day, WaterQuantity.PHOSPHATE, "photometer");
        }
        if (day % 7 == 3) {
            read(day, WaterQuantity.NITRATE, "photometer");
            read(day, WaterQuantity.TEMPERATURE, "digital_thermometer");
        }
        if (day % 14 == 0) {
            read(day, WaterQuantity.MAGNESIUM, "titration");
            read(day, WaterQuantity.PH, "electrode");
        }
    }

    private void read(int day, WaterQuantity quantity, String key) {
        TestMethod method = TestMethods.find(quantity, key).orElseThrow();
        double truth = truth(day, quantity);
        double bias = biases.computeIfAbsent(
                quantity.key() + key, none -> 0.6 * dice.nextGaussian() * method.biasError(truth));
        double held =
                truth + bias + dice.nextGaussian() * Math.hypot(method.scatter(), method.relativeScatter() * truth);
        QuantityUnit unit = quantity.units().get(0);
        double step = shownStep(quantity);
        double written = Math.max(step, rounded(unit.fromHeld(held), step));
        line(day, TESTED_AT, new Event.Reading(quantity, written, unit, key));
    }

    /** Every hour; off by a bias of its method, with a scatter far below that of a value as it is shown. */
    private void probe(WaterQuantity quantity, Instant until) {
        TestMethod method = TestMethods.find(quantity, "probe").orElseThrow();
        double bias = 0.6 * noise.nextGaussian() * method.biasError(truth(0, quantity));
        double step = quantity == WaterQuantity.PH ? 0.01 : 0.1;
        List<Value> values = new ArrayList<>();
        for (int hour = 0; hour <= DAYS * SAMPLES_A_DAY + SAMPLES_A_DAY; hour++) {
            Instant at = begins.toInstant().plus(Duration.ofHours(hour));
            double shown = sample(hour, quantity) + bias + SCATTER_OF_PROBE * method.scatter() * noise.nextGaussian();
            if (at.isBefore(until)) {
                values.add(new Value(at, rounded(shown, step)));
            }
        }
        probes.put(new Probe(quantity, method.key(), "sump, invented"), values);
    }

    /** In the quantity's coherent unit, at the hour of testing. */
    private double truth(int day, WaterQuantity quantity) {
        return sample(day * SAMPLES_A_DAY + TESTED_AT.getHour(), quantity);
    }

    private double sample(int sample, WaterQuantity quantity) {
        double value = course.of(told(quantity))[sample];
        // The twin tells pH on the total scale, all else in the quantity's usual unit.
        int unit = quantity == WaterQuantity.PH ? 1 : 0;
        return quantity.units().get(unit).toHeld(value);
    }

    /** As the twin's forecast calls it. */
    private static Quantity told(WaterQuantity quantity) {
        return switch (quantity) {
            case ALKALINITY -> Quantity.ALKALINITY;
            case CALCIUM -> Quantity.CALCIUM;
            case MAGNESIUM -> Quantity.MAGNESIUM;
            case NITRATE -> Quantity.NITRATE;
            case PHOSPHATE -> Quantity.PHOSPHATE;
            case SALINITY -> Quantity.SALINITY;
            case TEMPERATURE -> Quantity.TEMPERATURE;
            case PH -> Quantity.PH;
            case NITRITE, AMMONIA, OXYGEN ->
                throw new IllegalArgumentException("the demo tests no " + quantity.words());
        };
    }

    /** What keepers write down, in the usual unit. */
    private static double shownStep(WaterQuantity quantity) {
        return switch (quantity) {
            case ALKALINITY, SALINITY, TEMPERATURE, OXYGEN -> 0.1;
            case CALCIUM -> 5;
            case MAGNESIUM -> 10;
            case NITRATE -> 0.5;
            case PHOSPHATE, PH, NITRITE, AMMONIA -> 0.01;
        };
    }

    private static double rounded(double value, double step) {
        double steps = Math.rint(value / step);
        // Times the step would leave noise in the last digit: 81 × 0.1 is 8.100000000000001.
        return step < 1 && step > 1e-6 ? steps / Math.rint(1 / step) : steps * step;
    }

    private void line(int day, LocalTime at, Event event) {
        ZonedDateTime time = begins.plusDays(day).with(at);
        UUID id = UUID.nameUUIDFromBytes(("demo line " + drafts.size()).getBytes(StandardCharsets.UTF_8));
        drafts.add(new Draft(id, time.toOffsetDateTime(), event, ""));
    }
}
