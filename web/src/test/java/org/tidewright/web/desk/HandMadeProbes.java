package org.tidewright.web.desk;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.DoubleSummaryStatistics;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.NavigableMap;
import java.util.TreeMap;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.tidewright.husbandry.journal.ProbeLog;
import org.tidewright.husbandry.journal.Span;

/** Probes in memory, so that pages can be tested without a store. */
public final class HandMadeProbes implements ProbeLog {
    private final Map<String, Map<Probe, NavigableMap<Instant, Double>>> systems = new LinkedHashMap<>();

    private Map<Probe, NavigableMap<Instant, Double>> of(String system) {
        return systems.computeIfAbsent(system, none -> new LinkedHashMap<>());
    }

    @Override
    public synchronized void append(String system, Probe probe, List<Value> values) {
        NavigableMap<Instant, Double> kept = of(system).computeIfAbsent(probe, none -> new TreeMap<>());
        values.forEach(value -> kept.put(value.at(), value.value()));
    }

    @Override
    public synchronized List<Probe> probes(String system) {
        return List.copyOf(of(system).keySet());
    }

    @Override
    public synchronized List<Value> values(String system, Probe probe, Span span) {
        return of(system)
                .getOrDefault(probe, new TreeMap<>())
                .subMap(span.from(), true, span.to(), false)
                .entrySet()
                .stream()
                .map(entry -> new Value(entry.getKey(), entry.getValue()))
                .toList();
    }

    @Override
    public List<Bin> bins(String system, Probe probe, Span span, int most) {
        List<Value> values = values(system, probe, span);
        if (values.size() <= most) {
            return bins(values, at -> at);
        }
        for (Duration length : List.of(Duration.ofMinutes(1), Duration.ofHours(1))) {
            List<Bin> bins = bins(values, at -> floor(at, length));
            if (bins.size() <= most) {
                return bins;
            }
        }
        return bins(values, at -> floor(at, Duration.ofDays(1)));
    }

    private static Instant floor(Instant at, Duration length) {
        return Instant.ofEpochMilli(Math.floorDiv(at.toEpochMilli(), length.toMillis()) * length.toMillis());
    }

    private static List<Bin> bins(List<Value> values, Function<Instant, Instant> beginning) {
        Map<Instant, DoubleSummaryStatistics> stretches = values.stream()
                .collect(Collectors.groupingBy(
                        value -> beginning.apply(value.at()),
                        TreeMap::new,
                        Collectors.summarizingDouble(Value::value)));
        List<Bin> bins = new ArrayList<>();
        stretches.forEach(
                (from, of) -> bins.add(new Bin(from, (int) of.getCount(), of.getMin(), of.getAverage(), of.getMax())));
        return bins;
    }
}
