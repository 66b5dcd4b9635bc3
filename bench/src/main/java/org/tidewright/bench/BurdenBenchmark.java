package org.tidewright.bench;

import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;
import org.tidewright.husbandry.burden.Addition;
import org.tidewright.husbandry.burden.Burden;
import org.tidewright.husbandry.burden.Lately;
import org.tidewright.husbandry.burden.Residents;
import org.tidewright.plan.model.Plan;
import org.tidewright.twin.ensemble.Ensemble;

/** What a keeper waits for who looks at an animal that may come: the system as it is once, then each animal. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Fork(2)
@Warmup(iterations = 3, time = 5)
@Measurement(iterations = 5, time = 5)
public class BurdenBenchmark {
    @Param({"harbour-room", "fifty-five-gallon", "window-nano"})
    public String plan = "harbour-room";

    private Plan kept = ExamplePlan.named("harbour-room");
    private Residents residents = residents(kept);

    @Setup
    public void settle() {
        kept = ExamplePlan.named(plan);
        residents = residents(kept);
    }

    private static Residents residents(Plan plan) {
        return Residents.of(
                plan, Lately.NOTHING, Residents.usualOutage(), Residents.DRAWS, Ensemble.Progress.UNWATCHED);
    }

    /** The system as it is, over all draws. */
    @Benchmark
    public Residents asItIs() {
        return residents(kept);
    }

    /** A fish of 10 g that grows to 80, over the same draws. */
    @Benchmark
    public Burden oneMore() {
        return residents.with(Addition.today(0.010, 1, 0.080), Ensemble.Progress.UNWATCHED);
    }
}
