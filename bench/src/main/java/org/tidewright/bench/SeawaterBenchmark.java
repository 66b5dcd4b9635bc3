package org.tidewright.bench;

import java.util.Arrays;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OperationsPerInvocation;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;
import org.tidewright.seawater.density.Density;
import org.tidewright.seawater.gas.OxygenSolubility;
import org.tidewright.seawater.salinity.Conductivity;

/**
 * Functions of the seawater library, one point at a time and over an array, as ./bench/compare sets them beside compiled C.
 * A method's name, in small letters with underscores, is the peer's key: eos80Density and eos80DensityBatched are
 * eos80_density. To add a function, write both methods here, and its line in {@link #main}; the keys that the peers have
 * ready are in bench/peer/times.c and gsw_times.py.
 */
@State(Scope.Thread)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.NANOSECONDS)
@Fork(2)
@Warmup(iterations = 4, time = 1)
@Measurement(iterations = 7, time = 500, timeUnit = TimeUnit.MILLISECONDS)
public class SeawaterBenchmark {
    private final SeawaterPoints points = new SeawaterPoints();
    private final double[] results = new double[SeawaterPoints.COUNT];
    private int last;

    /** The next point, and after the last the first again: no input is the same as before. */
    private int next() {
        last = last + 1 == SeawaterPoints.COUNT ? 0 : last + 1;
        return last;
    }

    /** Prints the mean of each function's results, which must be that of the peers. */
    public static void main(String[] arguments) {
        SeawaterBenchmark all = new SeawaterBenchmark();
        System.out.println("name,mean_result");
        printMean("eos80_density", all.eos80DensityBatched());
        printMean("oxygen_solubility", all.oxygenSolubilityBatched());
        printMean("practical_salinity", all.practicalSalinityBatched());
    }

    private static void printMean(String name, double[] results) {
        System.out.println(name + "," + Arrays.stream(results).sum() / results.length);
    }

    @Benchmark
    public double eos80Density() {
        int i = next();
        return Density.ofSeawater(points.temperature[i], points.practicalSalinity[i]);
    }

    @Benchmark
    @OperationsPerInvocation(SeawaterPoints.COUNT)
    public double[] eos80DensityBatched() {
        for (int i = 0; i < SeawaterPoints.COUNT; i++) {
            results[i] = Density.ofSeawater(points.temperature[i], points.practicalSalinity[i]);
        }
        return results;
    }

    @Benchmark
    public double oxygenSolubility() {
        int i = next();
        return OxygenSolubility.perMass(points.temperature[i], points.practicalSalinity[i]);
    }

    @Benchmark
    @OperationsPerInvocation(SeawaterPoints.COUNT)
    public double[] oxygenSolubilityBatched() {
        for (int i = 0; i < SeawaterPoints.COUNT; i++) {
            results[i] = OxygenSolubility.perMass(points.temperature[i], points.practicalSalinity[i]);
        }
        return results;
    }

    @Benchmark
    public double practicalSalinity() {
        int i = next();
        return Conductivity.toPractical(points.conductivity[i], points.temperature[i]);
    }

    @Benchmark
    @OperationsPerInvocation(SeawaterPoints.COUNT)
    public double[] practicalSalinityBatched() {
        for (int i = 0; i < SeawaterPoints.COUNT; i++) {
            results[i] = Conductivity.toPractical(points.conductivity[i], points.temperature[i]);
        }
        return results;
    }
}
