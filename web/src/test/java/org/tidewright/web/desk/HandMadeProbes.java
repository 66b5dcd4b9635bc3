package org.tidewright.web.desk;

import java.time.Instant;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.NavigableMap;
import java.util.TreeMap;
import org.tidewright.husbandry.journal.ProbeLog;
import org.tidewright.husbandry.journal.Span;

/** What probes said, in memory, so that pages can be tested without a store. It charts nothing. */
final class HandMadeProbes implements ProbeLog {
    private final Map<String, Map<Probe, NavigableMap<Instant, Double>>> systems = new LinkedHashMap<>();

    private Map<Probe, NavigableMap<Instant, Double>> of(String system) {
        return systems.computeIfAbsent(system, none -> new LinkedHashMap<>());
    }

    @Override
    public synchronized void append(String system, Probe probe, List<Value> values) {
        NavigableMap<Instant, Double> said = of(system).computeIfAbsent(probe, none -> new TreeMap<>());
        values.forEach(value -> said.put(value.at(), value.value()));
    }

    @Override
    public synchronized List<Probe> probes(String system) {
        return List.copyOf(of(system).keySet());
    }

    @Override
    public synchronized List<Value> values(String system, Probe probe, Span span) {
        List<Value> values = new ArrayList<>();
        of(system)
                .getOrDefault(probe, new TreeMap<>())
                .subMap(span.from(), span.to())
                .forEach((at, value) -> values.add(new Value(at, value)));
        return values;
    }

    @Override
    public List<Bin> bins(String system, Probe probe, Span span, int most) {
        throw new UnsupportedOperationException("no chart is drawn over these");
    }
}
