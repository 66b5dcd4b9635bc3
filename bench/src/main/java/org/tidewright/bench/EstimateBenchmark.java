package org.tidewright.bench;

import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import java.util.concurrent.TimeUnit;
import java.util.random.RandomGenerator;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;
import org.tidewright.husbandry.estimate.Estimate;
import org.tidewright.husbandry.estimate.Estimates;
import org.tidewright.husbandry.estimate.Inputs;
import org.tidewright.husbandry.journal.Event;
import org.tidewright.husbandry.journal.Line;
import org.tidewright.husbandry.journal.Span;
import org.tidewright.numerics.sample.Draws;
import org.tidewright.plan.method.TestMethod;
import org.tidewright.plan.method.TestMethods;
import org.tidewright.plan.method.WaterQuantity;
import org.tidewright.plan.model.Plan;

/**
 * What is known of a water from five years of its journal: eight quantities tested three times a week, one reading in 150 a
 * mistake, water changed each week.
 */
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Fork(2)
@Warmup(iterations = 5, time = 3)
@Measurement(iterations = 5, time = 3)
public class EstimateBenchmark {
    private static final int DAYS = 5 * 365;
    private static final int ONE_MISTAKEN_IN = 150;

    /** A journal, and what is worked out from it. */
    @State(Scope.Benchmark)
    public static class Kept {
        private final Plan plan = ExamplePlan.named("harbour-room");
        private final List<Line> lines = lines();
        private final Inputs inputs = Inputs.of(plan, lines, Span.EVER);
        private final Estimate alkalinity =
                Estimates.of(inputs).of(WaterQuantity.ALKALINITY).orElseThrow();

        private static List<Line> lines() {
            Map<WaterQuantity, String> methods = new LinkedHashMap<>();
            methods.put(WaterQuantity.ALKALINITY, "syringe_titration");
            methods.put(WaterQuantity.CALCIUM, "titration");
            methods.put(WaterQuantity.MAGNESIUM, "titration");
            methods.put(WaterQuantity.NITRATE, "photometer");
            methods.put(WaterQuantity.PHOSPHATE, "photometer");
            methods.put(WaterQuantity.SALINITY, "refractometer_seawater");
            methods.put(WaterQuantity.TEMPERATURE, "digital_thermometer");
            methods.put(WaterQuantity.PH, "electrode");
            Map<WaterQuantity, Double> levels = Map.of(
                    WaterQuantity.ALKALINITY, 2.9,
                    WaterQuantity.CALCIUM, 0.42,
                    WaterQuantity.MAGNESIUM, 1.32,
                    WaterQuantity.NITRATE, 8e-3,
                    WaterQuantity.PHOSPHATE, 6e-5,
                    WaterQuantity.SALINITY, 35.0,
                    WaterQuantity.TEMPERATURE, 25.5,
                    WaterQuantity.PH, 8.1);
            RandomGenerator dice = new Draws(5, 0).stream("journal");
            OffsetDateTime start = OffsetDateTime.of(2020, 1, 6, 0, 0, 0, 0, ZoneOffset.UTC);
            List<Line> lines = new ArrayList<>();
            for (int day = 0; day < DAYS; day++) {
                if (day % 7 == 0) {
                    add(lines, start.plusDays(day).plusHours(10), new Event.WaterChanged(0.045, Map.of()));
                }
                if (day % 7 == 1 || day % 7 == 3 || day % 7 == 5) {
                    OffsetDateTime at = start.plusDays(day).plusMinutes((long) (60 * dice.nextDouble(16, 22)));
                    methods.forEach((quantity, method) ->
                            add(lines, at, reading(quantity, method, levels.getOrDefault(quantity, 0.0), dice)));
                }
            }
            return lines;
        }

        private static Event reading(WaterQuantity quantity, String key, double level, RandomGenerator dice) {
            TestMethod method = TestMethods.find(quantity, key).orElseThrow();
            double shown = Math.max(0, level + method.repeatability(level) * dice.nextGaussian());
            boolean mistaken = dice.nextInt(ONE_MISTAKEN_IN) == 0 && 1.4 * shown < quantity.most();
            return new Event.Reading(
                    quantity,
                    quantity.units().get(0).fromHeld(mistaken ? 1.4 * shown : shown),
                    quantity.units().get(0),
                    key);
        }

        private static void add(List<Line> lines, OffsetDateTime at, Event event) {
            lines.add(new Line(new UUID(0, lines.size()), 1, at, event, "", false, at.toInstant()));
        }
    }

    /** From plan and lines to what bears on the water. */
    @Benchmark
    public Inputs inputs(Kept kept) {
        return Inputs.of(kept.plan, kept.lines, Span.EVER);
    }

    /** From there to all eight estimates: noise learnt, readings screened. */
    @Benchmark
    public Estimates estimates(Kept kept) {
        return Estimates.of(kept.inputs);
    }

    /** A thousand points of a curve with its band. */
    @Benchmark
    public double curve(Kept kept) {
        double sum = 0;
        for (int i = 0; i < 1000; i++) {
            Estimate.Point point = kept.alkalinity.at(DAYS * (i + 0.5) / 1000);
            sum += point.level().value() + point.use().standardError();
        }
        return sum;
    }
}
