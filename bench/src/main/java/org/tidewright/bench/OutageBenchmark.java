package org.tidewright.bench;

import java.util.List;
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
import org.tidewright.plan.model.Plan;
import org.tidewright.twin.rehearsal.Bound;
import org.tidewright.twin.rehearsal.Outage;
import org.tidewright.twin.rehearsal.OutageOrder;
import org.tidewright.twin.rehearsal.Outdoors;
import org.tidewright.twin.rehearsal.PowerCut;
import org.tidewright.twin.run.Run;
import org.tidewright.twin.tank.Plumbing;

/** A power cut of the first example: the minutes of water, and the hours of heat and oxygen. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Fork(2)
@Warmup(iterations = 4, time = 2)
@Measurement(iterations = 5, time = 2)
public class OutageBenchmark {
    private static final double SECONDS_PER_HOUR = 3600;

    @Param({"24", "48"})
    public int hours = 24;

    private PowerCut cut = new PowerCut(ExamplePlan.named("harbour-room"), new Plumbing.Assumptions(true, false));
    private Outage outage = outage(cut, hours);

    @Setup
    public void assemble() {
        Plan plan = ExamplePlan.named("harbour-room");
        cut = new PowerCut(plan, new Plumbing.Assumptions(true, false));
        outage = outage(cut, hours);
    }

    private static Outage outage(PowerCut cut, int hours) {
        Plan plan = ExamplePlan.named("harbour-room");
        List<Bound> bounds = List.of(
                new Bound("cold", Bound.Quantity.TEMPERATURE, 20, true),
                new Bound("breathless", Bound.Quantity.OXYGEN, 0.1, true));
        OutageOrder order = new OutageOrder(hours, Outdoors.constant(0), true, true);
        return new Outage(plan, order, Outage.volumesAfter(cut, cut.everythingStops()), bounds);
    }

    /** Ten minutes of levels and flows. */
    @Benchmark
    public PowerCut.Result waterOfOneCut() {
        return cut.everythingStops();
    }

    /** The hours once, on one core. */
    @Benchmark
    public double hoursOnce() {
        Run run = outage.failure(outage.twin().network().usualParameters()).run();
        run.until(outage.begins() + hours * SECONDS_PER_HOUR);
        return run.now().temperature(outage.twin().display());
    }

    /** The hours 200 times over, with their bands, on all cores. */
    @Benchmark
    public Outage.Result hours200Draws() {
        return outage.rehearse(Outage.DRAWS);
    }

    /** The hours 1,000 times over, with their bands, on all cores. */
    @Benchmark
    public Outage.Result hours1000Draws() {
        return outage.rehearse(1000);
    }
}
