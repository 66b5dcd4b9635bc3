package org.tidewright.store.probe;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.SortedMap;
import java.util.TreeMap;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.tidewright.husbandry.journal.ProbeLog;
import org.tidewright.husbandry.journal.ProbeLog.Bin;
import org.tidewright.husbandry.journal.ProbeLog.Probe;
import org.tidewright.husbandry.journal.ProbeLog.Value;
import org.tidewright.husbandry.journal.Span;
import org.tidewright.plan.method.WaterQuantity;
import org.tidewright.testkit.Draw;
import org.tidewright.testkit.SeededCases;

/** What whoever keeps probes' records must do, whatever it keeps them in. */
abstract class ProbeLogContract {
    private static final String REEF = "harbour room";
    private static final Probe SUMP = new Probe(WaterQuantity.TEMPERATURE, "probe", "sump");
    private static final Instant MIDNIGHT = Instant.parse("2026-05-03T00:00:00Z");

    private ProbeLog log;

    /** A log that holds nothing yet, apart from those under other names. */
    abstract ProbeLog openEmpty(String name);

    @BeforeEach
    void open() {
        log = openEmpty("log");
    }

    private static Value value(String at, double value) {
        return new Value(Instant.parse(at), value);
    }

    /** A value each step, rising by one. */
    private static List<Value> steady(Duration step, int count) {
        List<Value> values = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            values.add(new Value(MIDNIGHT.plus(step.multipliedBy(i)), i));
        }
        return values;
    }

    @Test
    void valuesComeBackInTheOrderOfTime() {
        Value first = value("1969-12-31T23:59:59.999Z", -1.5);
        Value second = value("2026-05-03T10:00:00Z", 25);
        Value third = value("2026-05-03T10:00:00.001Z", 25.1);
        log.append(REEF, SUMP, List.of(third, first));
        log.append(REEF, SUMP, List.of(second));
        assertThat(log.values(REEF, SUMP, Span.EVER)).containsExactly(first, second, third);
        assertThat(log.values(REEF, SUMP, new Span(Instant.MIN, Instant.MAX))).hasSize(3);
    }

    @Test
    void timesAreKeptToTheMillisecond() {
        log.append(REEF, SUMP, List.of(value("2026-05-03T10:00:00.123999999Z", 25)));
        assertThat(log.values(REEF, SUMP, Span.EVER)).containsExactly(value("2026-05-03T10:00:00.123Z", 25));
    }

    @Test
    void aSpanHoldsItsBeginningAndNotItsEnd() {
        log.append(REEF, SUMP, steady(Duration.ofMinutes(1), 10));
        Span span = new Span(MIDNIGHT.plusSeconds(120), MIDNIGHT.plusSeconds(300));
        assertThat(log.values(REEF, SUMP, span).stream().map(Value::value)).containsExactly(2.0, 3.0, 4.0);
        Span justAfter = new Span(
                MIDNIGHT.plusSeconds(120).plusNanos(1),
                MIDNIGHT.plusSeconds(300).plusNanos(1));
        assertThat(log.values(REEF, SUMP, justAfter).stream().map(Value::value)).containsExactly(3.0, 4.0, 5.0);
    }

    @Test
    void theLaterValueOfATimeStands() {
        log.append(REEF, SUMP, List.of(value("2026-05-03T10:00:00Z", 25), value("2026-05-03T10:00:00Z", 26)));
        log.append(REEF, SUMP, List.of(value("2026-05-03T10:00:00Z", 27)));
        assertThat(log.values(REEF, SUMP, Span.EVER)).containsExactly(value("2026-05-03T10:00:00Z", 27));
    }

    @Test
    void aProbeIsKnownOnceItSaysSomething() {
        Probe display = new Probe(WaterQuantity.TEMPERATURE, "probe", "display");
        Probe ph = new Probe(WaterQuantity.PH, "probe", "sump");
        assertThat(log.probes(REEF)).isEmpty();
        log.append(REEF, SUMP, List.of());
        assertThat(log.probes(REEF)).isEmpty();
        for (Probe probe : List.of(SUMP, ph, display)) {
            log.append(REEF, probe, List.of(value("2026-05-03T10:00:00Z", 8)));
            log.append(REEF, probe, List.of(value("2026-05-03T11:00:00Z", 8)));
        }
        assertThat(log.probes(REEF)).containsExactly(display, ph, SUMP);
        assertThat(log.probes("nano")).isEmpty();
    }

    @Test
    void probesAndSystemsAreKeptApart() {
        Probe display = new Probe(WaterQuantity.TEMPERATURE, "probe", "display");
        log.append(REEF, SUMP, List.of(value("2026-05-03T10:00:00Z", 25)));
        log.append(REEF, display, List.of(value("2026-05-03T10:00:00Z", 26)));
        log.append("nano", SUMP, List.of(value("2026-05-03T10:00:00Z", 27)));
        assertThat(log.values(REEF, SUMP, Span.EVER)).containsExactly(value("2026-05-03T10:00:00Z", 25));
        assertThat(log.bins(REEF, display, Span.EVER, 1).get(0).mean()).isEqualTo(26);
        assertThat(log.values("nano", display, Span.EVER)).isEmpty();
        assertThat(log.bins("nano", display, Span.EVER, 5)).isEmpty();
    }

    @Test
    void whatIsNoNumberOrHasNoTimeIsRefusedWithAllThatCameWithIt() {
        Value sound = value("2026-05-03T10:00:00Z", 25);
        for (Value unkeepable : List.of(
                value("2026-05-03T11:00:00Z", Double.NaN),
                value("2026-05-03T11:00:00Z", Double.POSITIVE_INFINITY),
                new Value(Instant.MAX, 25))) {
            assertThatIllegalArgumentException().isThrownBy(() -> log.append(REEF, SUMP, List.of(sound, unkeepable)));
        }
        assertThat(log.values(REEF, SUMP, Span.EVER)).isEmpty();
        assertThat(log.probes(REEF)).isEmpty();
    }

    @Test
    void aChartOfNoStretchesIsRefused() {
        assertThatIllegalArgumentException().isThrownBy(() -> log.bins(REEF, SUMP, Span.EVER, 0));
    }

    @Test
    void fewValuesAreChartedOneByOne() {
        log.append(REEF, SUMP, steady(Duration.ofSeconds(1), 100));
        assertThat(log.bins(REEF, SUMP, Span.EVER, 100))
                .hasSize(100)
                .startsWith(new Bin(MIDNIGHT, 1, 0, 0, 0), new Bin(MIDNIGHT.plusSeconds(1), 1, 1, 1, 1));
    }

    @Test
    void moreValuesAreChartedByTheMinuteTheHourAndTheDay() {
        // Three days of a value a second for the first hour of each.
        List<Value> values = new ArrayList<>();
        for (int day = 0; day < 3; day++) {
            for (int second = 0; second < 3600; second++) {
                values.add(new Value(MIDNIGHT.plus(Duration.ofDays(day)).plusSeconds(second), day * 10_000 + second));
            }
        }
        log.append(REEF, SUMP, values);
        assertThat(log.bins(REEF, SUMP, Span.EVER, 180))
                .hasSize(180)
                .startsWith(new Bin(MIDNIGHT, 60, 0, 29.5, 59))
                .endsWith(new Bin(MIDNIGHT.plus(Duration.ofMinutes(2 * 1440 + 59)), 60, 23_540, 23_569.5, 23_599));
        assertThat(log.bins(REEF, SUMP, Span.EVER, 179))
                .as("hours; each day has values in one only")
                .containsExactly(
                        new Bin(MIDNIGHT, 3600, 0, 1799.5, 3599),
                        new Bin(MIDNIGHT.plus(Duration.ofDays(1)), 3600, 10_000, 11_799.5, 13_599),
                        new Bin(MIDNIGHT.plus(Duration.ofDays(2)), 3600, 20_000, 21_799.5, 23_599));
        log.append(REEF, SUMP, List.of(new Value(MIDNIGHT.plus(Duration.ofHours(5)), -7)));
        assertThat(log.bins(REEF, SUMP, Span.EVER, 3))
                .hasSize(3)
                .startsWith(new Bin(MIDNIGHT, 3601, -7, (1799.5 * 3600 - 7) / 3601, 3599));
    }

    @Test
    void whereADayIsTooFineADayItStays() {
        log.append(REEF, SUMP, steady(Duration.ofHours(5), 100));
        assertThat(log.bins(REEF, SUMP, Span.EVER, 2)).hasSize(21);
    }

    @Test
    void aStretchAtTheEdgeHoldsOnlyWhatIsWithinTheSpan() {
        log.append(REEF, SUMP, steady(Duration.ofMinutes(10), 6 * 24 * 3));
        Span span = new Span(MIDNIGHT.plus(Duration.ofMinutes(90)), MIDNIGHT.plus(Duration.ofMinutes(2 * 1440 + 30)));
        List<Bin> days = log.bins(REEF, SUMP, span, 3);
        assertThat(days.stream().map(Bin::count)).containsExactly(6 * 24 - 9, 6 * 24, 3);
        assertThat(days.get(0).from()).isEqualTo(MIDNIGHT);
        assertThat(days.get(0).least()).isEqualTo(9);
        assertThat(days.get(2).most()).isEqualTo(6 * 48 + 2);
    }

    @Test
    void aReplacedValueLeavesNoTraceInItsHourAndDay() {
        log.append(REEF, SUMP, steady(Duration.ofMinutes(1), 2000));
        Instant at = MIDNIGHT.plus(Duration.ofMinutes(70));
        log.append(REEF, SUMP, List.of(new Value(at, 1e9)));
        assertThat(log.bins(REEF, SUMP, Span.EVER, 40).get(1).most()).isEqualTo(1e9);
        assertThat(log.bins(REEF, SUMP, Span.EVER, 2).get(0).most()).isEqualTo(1e9);
        log.append(REEF, SUMP, List.of(new Value(at, 70)));
        assertThat(log.bins(REEF, SUMP, Span.EVER, 40).get(1))
                .isEqualTo(new Bin(MIDNIGHT.plus(Duration.ofHours(1)), 60, 60, 89.5, 119));
        assertThat(log.bins(REEF, SUMP, Span.EVER, 2).get(0)).isEqualTo(new Bin(MIDNIGHT, 1440, 0, 719.5, 1439));
    }

    @Test
    void aChartAgreesWithItsValuesWhateverWasAppended() {
        int[] tried = {0};
        SeededCases.check(60, draw -> {
            ProbeLog tryout = openEmpty("log " + tried[0]++);
            TreeMap<Instant, Double> expected = new TreeMap<>();
            Duration stride = draw.oneOf(Duration.ofMillis(700), Duration.ofSeconds(20), Duration.ofMinutes(30));
            int appends = draw.whole(1, 6);
            for (int i = 0; i < appends; i++) {
                List<Value> values = draw.list(0, 400, each -> randomValue(each, stride));
                tryout.append(REEF, SUMP, values);
                values.forEach(value -> expected.put(value.at(), value.value()));
            }
            for (int i = 0; i < 12; i++) {
                Span span = randomSpan(draw, stride);
                SortedMap<Instant, Double> within = expected.subMap(span.from(), span.to());
                assertThat(tryout.values(REEF, SUMP, span))
                        .isEqualTo(within.entrySet().stream()
                                .map(each -> new Value(each.getKey(), each.getValue()))
                                .toList());
                int most = draw.oneOf(1, 3, 10, 40, 200, 5000);
                assertSame(tryout.bins(REEF, SUMP, span, most), bruteForce(within, most));
            }
        });
    }

    private static Value randomValue(Draw draw, Duration stride) {
        return new Value(MIDNIGHT.plus(stride.multipliedBy(draw.whole(-1000, 1000))), draw.between(-1e6, 1e6) + 0.0);
    }

    private static Span randomSpan(Draw draw, Duration stride) {
        double reach = stride.multipliedBy(1100).toMillis();
        List<Instant> ends = new ArrayList<>();
        for (int i = 0; i < 2; i++) {
            ends.add(MIDNIGHT.plusMillis((long) draw.between(-reach, reach)));
        }
        Collections.sort(ends);
        return draw.whole(0, 4) == 0 ? Span.EVER : new Span(ends.get(0), ends.get(1));
    }

    /** The finest stretches, none of them empty, that are not too many; days if even they are. */
    private static List<Bin> bruteForce(SortedMap<Instant, Double> values, int most) {
        List<Bin> bins = List.of();
        for (long length : new long[] {1, 60_000, 3_600_000, 86_400_000}) {
            TreeMap<Long, List<Double>> stretches = new TreeMap<>();
            values.forEach((at, value) -> stretches
                    .computeIfAbsent(Math.floorDiv(at.toEpochMilli(), length) * length, from -> new ArrayList<>())
                    .add(value));
            bins = stretches.entrySet().stream()
                    .map(each -> bin(each.getKey(), each.getValue()))
                    .toList();
            if (bins.size() <= most) {
                return bins;
            }
        }
        return bins;
    }

    private static Bin bin(long fromMs, List<Double> values) {
        double sum = values.stream().mapToDouble(Double::doubleValue).sum();
        return new Bin(
                Instant.ofEpochMilli(fromMs),
                values.size(),
                Collections.min(values),
                sum / values.size(),
                Collections.max(values));
    }

    /** Equal but for the rounding of sums: each addition of numbers up to a million may err by 1e-10. */
    private static void assertSame(List<Bin> bins, List<Bin> expected) {
        assertThat(bins).hasSameSizeAs(expected);
        for (int i = 0; i < bins.size(); i++) {
            Bin bin = bins.get(i);
            Bin right = expected.get(i);
            assertThat(bin.mean()).isCloseTo(right.mean(), within(1e-8));
            assertThat(bin).isEqualTo(new Bin(right.from(), right.count(), right.least(), bin.mean(), right.most()));
        }
    }
}
