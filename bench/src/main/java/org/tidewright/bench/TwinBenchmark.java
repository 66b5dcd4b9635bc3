package org.tidewright.bench;

import java.util.EnumSet;
import java.util.List;
import java.util.concurrent.ForkJoinPool;
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
import org.openjdk.jmh.annotations.TearDown;
import org.openjdk.jmh.annotations.Warmup;
import org.tidewright.twin.ensemble.Ensemble;
import org.tidewright.twin.forecast.Course;
import org.tidewright.twin.forecast.Forecast;
import org.tidewright.twin.forecast.Quantity;
import org.tidewright.twin.run.Accuracy;
import org.tidewright.twin.run.Run;
import org.tidewright.twin.system.SystemTwin;

/** The complete twin: a year of it, a forecast as a page asks for it, and an outage with its doubt on one and two cores. */
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Fork(2)
@Warmup(iterations = 5, time = 3)
@Measurement(iterations = 5, time = 3)
public class TwinBenchmark {
    private static final double DAY = 86_400;
    private static final int DRAWS = 1000;
    private static final long SEED = 5;

    /** One example and its twin. */
    @State(Scope.Benchmark)
    public static class Example {
        @Param({"harbour-room", "fifty-five-gallon", "window-nano"})
        public String plan = "harbour-room";

        private SystemTwin twin = SystemTwin.of(ExamplePlan.named("harbour-room"));
        private Forecast forecast = Forecast.of(ExamplePlan.named("harbour-room"));

        @Setup
        public void assemble() {
            twin = SystemTwin.of(ExamplePlan.named(plan));
            forecast = Forecast.of(ExamplePlan.named(plan));
        }
    }

    /** Everything for a year, on one core. */
    @Benchmark
    public double year(Example example) {
        double[] parameters = example.twin.network().usualParameters();
        Run run = new Run(example.twin.network(), parameters, example.twin.start(parameters), Accuracy.OF_A_YEAR);
        run.until(365 * DAY);
        return run.now().oxygen(example.twin.display());
    }

    /** Twelve weeks with their account, from a system that has settled in. */
    @Benchmark
    public Course twelveWeeks(Example example) {
        return example.forecast.course(84, 169, EnumSet.of(Quantity.NITRATE, Quantity.PHOSPHATE, Quantity.AMMONIA));
    }

    /** How many cores an ensemble may use. */
    @State(Scope.Benchmark)
    public static class Cores {
        @Param({"1", "2"})
        public int cores = 1;

        private ForkJoinPool pool = new ForkJoinPool(1);

        @Setup
        public void open() {
            pool = new ForkJoinPool(cores);
        }

        @TearDown
        public void close() {
            pool.shutdown();
        }
    }

    /** A thousand draws of two days without power, everything followed. */
    @Benchmark
    public List<Double> outageOf48Hours(Example example, Cores cores) {
        SystemTwin twin = example.twin;
        org.tidewright.twin.run.State settled = twin.start(twin.network().usualParameters());
        Ensemble ensemble = new Ensemble(twin.network().parameters(), DRAWS, SEED);
        return cores.pool
                .submit(() -> ensemble.map(parameters -> {
                    Run run = new Run(twin.network(), parameters, settled.copy(), Accuracy.OF_A_YEAR);
                    run.set(twin.levers().get("power").setting(), 0);
                    run.until(2 * DAY);
                    return run.now().oxygen(twin.display());
                }))
                .join();
    }
}
