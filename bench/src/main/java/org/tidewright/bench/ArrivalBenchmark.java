package org.tidewright.bench;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.concurrent.TimeUnit;
import org.jspecify.annotations.Nullable;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;
import org.tidewright.husbandry.arrival.ArrivalPlan;
import org.tidewright.husbandry.arrival.ArrivalPlanner;
import org.tidewright.husbandry.arrival.ArrivalRequest;
import org.tidewright.husbandry.arrival.NotBefore;
import org.tidewright.husbandry.arrival.Pace;
import org.tidewright.husbandry.arrival.PreyFirst;
import org.tidewright.husbandry.arrival.QuarantineTank;
import org.tidewright.husbandry.arrival.Trouble;
import org.tidewright.husbandry.arrival.Wish;
import org.tidewright.husbandry.arrival.Wish.After;
import org.tidewright.seawater.unit.Unit;

/** The order and the days of a dozen arrivals, and why each waits. The list is invented. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Fork(2)
@Warmup(iterations = 3, time = 5)
@Measurement(iterations = 5, time = 5)
public class ArrivalBenchmark {
    private static final LocalDate START = LocalDate.of(2031, 3, 3);
    private static final int HORIZON_DAYS = 730;
    private static final int GAP_DAYS = 14;
    private static final int DRY_DAYS = 3;

    /** For one wish at a time, for two, one of each, and the last with a monthly budget. */
    @Param({"one", "shared", "two", "two-and-budget"})
    public String tanks = "one";

    @Benchmark
    public ArrivalPlan plan() {
        return ArrivalPlanner.plan(request(tanks));
    }

    /** Public for whoever wants to see the plan behind the number. */
    public static ArrivalRequest request(String tanks) {
        List<QuarantineTank> quarantine = new ArrayList<>();
        if (!tanks.equals("shared")) {
            quarantine.add(tank("small", 0.08, 1));
        }
        if (!tanks.equals("one")) {
            quarantine.add(tank("large", 0.15, 2));
        }
        Long budget = tanks.equals("two-and-budget") ? 25_000L : null;
        return new ArrivalRequest(
                START,
                HORIZON_DAYS,
                wishes(),
                quarantine,
                new Pace(0.05, 0.5, 0.03, GAP_DAYS, null, budget),
                Set.of(
                        new Trouble("dottyback", "goby"),
                        new Trouble("dottyback", "firefish"),
                        new Trouble("tang", "foxface"),
                        new Trouble("angelfish", "butterflyfish"),
                        new Trouble("damsels", "firefish")),
                Set.of(new PreyFirst("hawkfish", "shrimp", 30)),
                List.of());
    }

    private static QuarantineTank tank(String name, @Unit("kg") double capacity, int batches) {
        return new QuarantineTank(name, capacity, batches, START, DRY_DAYS, GAP_DAYS);
    }

    private static List<Wish> wishes() {
        NotBefore young = new NotBefore(START.plusDays(120), "the display is too young");
        return List.of(
                wish("goby", 4, 1, 0.05, 30, 4_000, null),
                wish("firefish", 5, 1, 0.06, 30, 5_000, null),
                wish("chromis", 18, 2, 0.04, 30, 9_000, null),
                wish("clownfish", 12, 3, 0.05, 21, 8_000, null),
                wish("shrimp", 6, 1, 0.05, 14, 5_000, null),
                wish("hawkfish", 9, 4, 0.07, 30, 6_000, null),
                wish("dottyback", 6, 5, 0.06, 30, 5_000, null),
                wish("damsels", 15, 4, 0.05, 30, 7_000, null),
                wish("foxface", 40, 2, 0.12, 45, 11_000, null),
                wish("tang", 35, 4, 0.10, 45, 15_000, young),
                wish("butterflyfish", 25, 2, 0.10, 45, 12_000, young),
                wish("angelfish", 28, 4, 0.09, 45, 18_000, young));
    }

    private static Wish wish(
            String id,
            int grams,
            int temperament,
            @Unit("m") double length,
            int days,
            long price,
            @Nullable NotBefore intoDisplay) {
        List<After> after = id.equals("tang") ? List.of(new After("chromis", GAP_DAYS)) : List.of();
        return new Wish(
                id, id, 1, grams / 1000.0, temperament, length, days, price, null, intoDisplay, after, Set.of());
    }
}
