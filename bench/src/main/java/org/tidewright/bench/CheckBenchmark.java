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
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;
import org.tidewright.husbandry.advice.Report;
import org.tidewright.husbandry.check.PlanChecks;
import org.tidewright.plan.Examples;
import org.tidewright.plan.text.PlanReading;
import org.tidewright.plan.text.PlanText;

/** Reading a plan, and all its checks. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Fork(2)
@Warmup(iterations = 4, time = 2)
@Measurement(iterations = 5, time = 2)
public class CheckBenchmark {
    @Param({"harbour-room", "fifty-five-gallon", "window-nano"})
    public String example = "harbour-room";

    @Benchmark
    public PlanReading read() {
        return PlanText.read(Examples.text(example));
    }

    @Benchmark
    public Report check() {
        return PlanChecks.of(ExamplePlan.named(example));
    }
}
