package org.tidewright.bench;

import java.util.Arrays;
import java.util.EnumMap;
import java.util.Map;
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
import org.openjdk.jmh.infra.Blackhole;
import org.tidewright.seawater.carbonate.BoronRatio;
import org.tidewright.seawater.carbonate.CarbonateBatch;
import org.tidewright.seawater.carbonate.CarbonateQuantity;
import org.tidewright.seawater.carbonate.CarbonateState;
import org.tidewright.seawater.carbonate.CarbonateSystem;
import org.tidewright.seawater.carbonate.CarbonicAcid;
import org.tidewright.seawater.carbonate.KnownPair;
import org.tidewright.seawater.carbonate.PhScale;
import org.tidewright.seawater.carbonate.TotalConcentrations;
import org.tidewright.seawater.column.Columns;
import org.tidewright.seawater.density.Density;
import org.tidewright.seawater.density.PolynomialDensity;
import org.tidewright.seawater.density.Teos10;
import org.tidewright.seawater.gas.OxygenSolubility;
import org.tidewright.seawater.heat.MoistAir;
import org.tidewright.seawater.salinity.Conductivity;

/**
 * Functions of the seawater library, one point at a time and over an array, as ./bench/peers/seawater/compare sets them beside compiled C.
 * A method's name, in small letters with underscores, is the peer's key: eos80Density and eos80DensityBatched are
 * eos80_density. To add a function, write both methods here, and its line in {@link #main}; the keys that the peers have
 * ready are in bench/peers/seawater/times.c and gsw_times.py.
 */
@State(Scope.Thread)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.NANOSECONDS)
@Fork(2)
@Warmup(iterations = 4, time = 1)
@Measurement(iterations = 7, time = 500, timeUnit = TimeUnit.MILLISECONDS)
public class SeawaterBenchmark {
    private static final PhScale[] SCALES = PhScale.values();

    private final SeawaterPoints points = new SeawaterPoints();
    private final double[] results = new double[SeawaterPoints.COUNT];
    private final Map<CarbonateQuantity, double[]> co2Columns = columns();
    private final CarbonateBatch co2 = new CarbonateBatch(
                    KnownPair.ALKALINITY_CARBON, BoronRatio.UPPSTROM_1974, CarbonicAcid.LUEKER_2000, co2Columns)
            .withNutrients(points.phosphate, points.silicate, points.ammonia);
    private int last;

    private static Map<CarbonateQuantity, double[]> columns() {
        Map<CarbonateQuantity, double[]> columns = new EnumMap<>(CarbonateQuantity.class);
        for (CarbonateQuantity quantity : CarbonateQuantity.values()) {
            columns.put(quantity, new double[SeawaterPoints.COUNT]);
        }
        return columns;
    }

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
        printMean("teos10_density", all.teos10DensityBatched());
        printMean("teos10_density_from_practical", all.teos10DensityFromPracticalBatched());
        printMean("teos10_density_exact", all.teos10DensityExactBatched());
        printMean("teos10_thermal_expansion", all.teos10ThermalExpansionBatched());
        printMean("teos10_haline_contraction", all.teos10HalineContractionBatched());
        printMean("teos10_specific_heat", all.teos10SpecificHeatBatched());
        printMean("co2_system", all.co2SystemBatched());
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
        Columns.fill(Density::ofSeawater, points.temperature, points.practicalSalinity, results);
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
        Columns.fill(OxygenSolubility::perMass, points.temperature, points.practicalSalinity, results);
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
        Columns.fill(Conductivity::toPractical, points.conductivity, points.temperature, results);
        return results;
    }

    @Benchmark
    public double teos10Density() {
        int i = next();
        return PolynomialDensity.ofConservative(points.conservativeTemperature[i], points.absoluteSalinity[i]);
    }

    @Benchmark
    @OperationsPerInvocation(SeawaterPoints.COUNT)
    public double[] teos10DensityBatched() {
        Columns.fill(
                PolynomialDensity::ofConservative, points.conservativeTemperature, points.absoluteSalinity, results);
        return results;
    }

    @Benchmark
    public double teos10DensityFromPractical() {
        int i = next();
        return PolynomialDensity.ofSeawater(points.temperature[i], points.practicalSalinity[i]);
    }

    @Benchmark
    @OperationsPerInvocation(SeawaterPoints.COUNT)
    public double[] teos10DensityFromPracticalBatched() {
        Columns.fill(PolynomialDensity::ofSeawater, points.temperature, points.practicalSalinity, results);
        return results;
    }

    @Benchmark
    public double teos10DensityExact() {
        int i = next();
        return Teos10.density(points.temperature[i], points.practicalSalinity[i]);
    }

    @Benchmark
    @OperationsPerInvocation(SeawaterPoints.COUNT)
    public double[] teos10DensityExactBatched() {
        Columns.fill(Teos10::density, points.temperature, points.practicalSalinity, results);
        return results;
    }

    @Benchmark
    public double teos10ThermalExpansion() {
        int i = next();
        return PolynomialDensity.thermalExpansion(points.conservativeTemperature[i], points.absoluteSalinity[i]);
    }

    @Benchmark
    @OperationsPerInvocation(SeawaterPoints.COUNT)
    public double[] teos10ThermalExpansionBatched() {
        Columns.fill(
                PolynomialDensity::thermalExpansion, points.conservativeTemperature, points.absoluteSalinity, results);
        return results;
    }

    @Benchmark
    public double teos10HalineContraction() {
        int i = next();
        return PolynomialDensity.halineContraction(points.conservativeTemperature[i], points.absoluteSalinity[i]);
    }

    @Benchmark
    @OperationsPerInvocation(SeawaterPoints.COUNT)
    public double[] teos10HalineContractionBatched() {
        Columns.fill(
                PolynomialDensity::halineContraction, points.conservativeTemperature, points.absoluteSalinity, results);
        return results;
    }

    @Benchmark
    public double teos10SpecificHeat() {
        int i = next();
        return Teos10.specificHeat(points.temperature[i], points.practicalSalinity[i]);
    }

    @Benchmark
    @OperationsPerInvocation(SeawaterPoints.COUNT)
    public double[] teos10SpecificHeatBatched() {
        Columns.fill(Teos10::specificHeat, points.temperature, points.practicalSalinity, results);
        return results;
    }

    @Benchmark
    public void co2System(Blackhole hole) {
        int i = next();
        double salinity = points.practicalSalinity[i];
        TotalConcentrations totals = TotalConcentrations.ofSeawater(salinity, BoronRatio.UPPSTROM_1974)
                .withNutrients(points.phosphate[i], points.silicate[i], points.ammonia[i]);
        CarbonateState state = CarbonateSystem.at(points.temperature[i], salinity, totals)
                .fromAlkalinityAndCarbon(points.alkalinity[i], points.dissolvedInorganicCarbon[i]);
        for (PhScale scale : SCALES) {
            hole.consume(state.ph(scale));
        }
        hole.consume(state.partialPressure());
        hole.consume(state.fugacity());
        hole.consume(state.shareOfDryAir(MoistAir.STANDARD_PRESSURE));
        hole.consume(state.freeHydrogen());
        hole.consume(state.hydroxide());
        hole.consume(state.carbonDioxide());
        hole.consume(state.bicarbonate());
        hole.consume(state.carbonate());
        hole.consume(state.borate());
        hole.consume(state.boricAcid());
        hole.consume(state.phosphoricAcid());
        hole.consume(state.dihydrogenPhosphate());
        hole.consume(state.hydrogenPhosphate());
        hole.consume(state.phosphateIon());
        hole.consume(state.silicateIon());
        hole.consume(state.unionisedAmmonia());
        hole.consume(state.ammonium());
        hole.consume(state.bisulfate());
        hole.consume(state.hydrogenFluoride());
        hole.consume(state.aragoniteSaturation());
        hole.consume(state.calciteSaturation());
        hole.consume(state.revelleFactor());
    }

    /** Fills every column there is. */
    @Benchmark
    @OperationsPerInvocation(SeawaterPoints.COUNT)
    public double[] co2SystemBatched() {
        co2.solve(points.temperature, points.practicalSalinity, points.alkalinity, points.dissolvedInorganicCarbon);
        return co2Columns.getOrDefault(CarbonateQuantity.PH_TOTAL, results);
    }
}
