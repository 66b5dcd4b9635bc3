package org.tidewright.bench;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.List;
import java.util.UUID;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.TearDown;
import org.openjdk.jmh.annotations.Warmup;
import org.tidewright.husbandry.journal.Draft;
import org.tidewright.husbandry.journal.Event;
import org.tidewright.husbandry.journal.Kind;
import org.tidewright.husbandry.journal.Line;
import org.tidewright.husbandry.journal.ProbeLog.Bin;
import org.tidewright.husbandry.journal.ProbeLog.Probe;
import org.tidewright.husbandry.journal.ProbeLog.Value;
import org.tidewright.husbandry.journal.Span;
import org.tidewright.plan.method.QuantityUnit;
import org.tidewright.plan.method.WaterQuantity;
import org.tidewright.store.Store;

/** Keeping lines and values on the disk, and reading them for a page. The file lies where temporary files do. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Fork(2)
@Warmup(iterations = 4, time = 2)
@Measurement(iterations = 5, time = 2)
public class StoreBenchmark {
    private static final String REEF = "harbour room";
    private static final Probe SUMP = new Probe(WaterQuantity.TEMPERATURE, "probe", "sump");
    private static final Probe NEW = new Probe(WaterQuantity.TEMPERATURE, "probe", "display");
    private static final Instant BEGINNING = Instant.parse("2021-01-01T00:00:00Z");
    private static final Span FIVE_YEARS = new Span(BEGINNING, Instant.parse("2025-12-31T00:00:00Z"));
    private static final int MINUTES_OF_A_MONTH = 43_800;
    private static final int MONTHS = 60;
    private static final int LINES = 10_000;
    private static final int STRETCHES_OF_A_CHART = 2000;
    private static final int VALUES = 50_000;

    private Path folder = Path.of("");
    private Store store = open(temporary());
    private int written;

    @Setup
    public void fill() {
        store.journal().writeAll(REEF, drafts(), done -> {});
        for (int month = 0; month < MONTHS; month++) {
            store.probes().append(REEF, SUMP, values(MINUTES_OF_A_MONTH, 60_000L, MINUTES_OF_A_MONTH * month));
        }
    }

    @TearDown
    public void remove() {
        store.close();
        try (var files = Files.walk(folder)) {
            files.sorted(Comparator.reverseOrder())
                    .forEach(file -> file.toFile().delete());
        } catch (IOException failure) {
            throw new UncheckedIOException(failure);
        }
    }

    /** One line, on the disk when it is acknowledged. */
    @Benchmark
    public Line write() {
        return store.journal().write("one by one", draft(written++));
    }

    /** Ten thousand lines at once, as from a file. */
    @Benchmark
    public int writeTenThousand() {
        return store.journal().writeAll("import " + written++, drafts(), done -> {});
    }

    /** The readings of a month out of ten thousand hours. */
    @Benchmark
    public List<Line> readAMonth() {
        Span month = new Span(BEGINNING.plusSeconds(86_400L * 100), BEGINNING.plusSeconds(86_400L * 130));
        return store.journal().lines(REEF, month, EnumSet.of(Kind.READING));
    }

    /** Fifty thousand values at once, each of a new time. */
    @Benchmark
    public int appendFiftyThousand() {
        store.probes().append(REEF, NEW, values(VALUES, 1000, VALUES * written++));
        return written;
    }

    /** Five years of a value a minute, in days. */
    @Benchmark
    public List<Bin> chartFiveYears() {
        return store.probes().bins(REEF, SUMP, FIVE_YEARS, STRETCHES_OF_A_CHART);
    }

    /** Five years of a value a minute, in hours. */
    @Benchmark
    public List<Bin> chartFiveYearsByTheHour() {
        return store.probes().bins(REEF, SUMP, FIVE_YEARS, VALUES);
    }

    private Path temporary() {
        try {
            folder = Files.createTempDirectory("tidewright-bench");
            return folder;
        } catch (IOException failure) {
            throw new UncheckedIOException(failure);
        }
    }

    private static Store open(Path folder) {
        return Store.open(folder.resolve("reef.db"), Clock.systemUTC());
    }

    private static List<Draft> drafts() {
        List<Draft> drafts = new ArrayList<>();
        for (int hour = 0; hour < LINES; hour++) {
            drafts.add(draft(hour));
        }
        return drafts;
    }

    private static Draft draft(int hour) {
        QuantityUnit degrees = WaterQuantity.ALKALINITY.units().get(0);
        OffsetDateTime at = BEGINNING.plusSeconds(3600L * hour).atOffset(ZoneOffset.UTC);
        return new Draft(
                UUID.randomUUID(),
                at,
                new Event.Reading(WaterQuantity.ALKALINITY, 8 + hour % 7 * 0.1, degrees, "drop_titration"),
                "");
    }

    private static List<Value> values(int count, long stepMs, int first) {
        List<Value> values = new ArrayList<>();
        for (int i = first; i < first + count; i++) {
            values.add(new Value(BEGINNING.plusMillis(stepMs * i), 25 + Math.sin(i * 1e-3)));
        }
        return values;
    }
}
