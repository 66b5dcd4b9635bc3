package org.tidewright.husbandry.exchange;

import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.DoubleSummaryStatistics;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.UUID;
import java.util.function.IntConsumer;
import java.util.stream.Collectors;
import org.tidewright.husbandry.journal.Draft;
import org.tidewright.husbandry.journal.Journal;
import org.tidewright.husbandry.journal.Kind;
import org.tidewright.husbandry.journal.Line;
import org.tidewright.husbandry.journal.Photos;
import org.tidewright.husbandry.journal.ProbeLog;
import org.tidewright.husbandry.journal.Span;

/** The ports of the journal, kept in memory: for tests, one thread, one system. */
public final class MemoryRecords implements Journal, ProbeLog, Photos {
    private final List<Line> written = new ArrayList<>();
    private final Map<Probe, TreeMap<Instant, Double>> probes = new LinkedHashMap<>();
    private final Map<String, Photo> photos = new LinkedHashMap<>();
    private Instant now = Instant.parse("2026-03-01T00:00:00Z");
    private int calls;

    KeptSystem as(String system) {
        return new KeptSystem(system, this, this, this);
    }

    /** How often anything was written. */
    int calls() {
        return calls;
    }

    private Line add(UUID id, int revision, Draft draft, boolean struck) {
        calls++;
        now = now.plusNanos(1_234_567);
        Line line = new Line(id, revision, draft.at(), draft.event(), draft.remark(), struck, now);
        written.add(line);
        return line;
    }

    private Optional<Line> latest(UUID id) {
        return written.stream().filter(line -> line.id().equals(id)).reduce((earlier, later) -> later);
    }

    @Override
    public Line write(String system, Draft draft) {
        return latest(draft.id()).orElseGet(() -> add(draft.id(), 1, draft, false));
    }

    @Override
    public int writeAll(String system, List<Draft> drafts, IntConsumer progress) {
        Set<UUID> here = written.stream().map(Line::id).collect(Collectors.toSet());
        int added = 0;
        for (Draft draft : drafts) {
            if (here.add(draft.id())) {
                add(draft.id(), 1, draft, false);
                added++;
            }
        }
        return added;
    }

    @Override
    public int writeTogether(Map<String, List<Draft>> drafts) {
        throw new UnsupportedOperationException("this holds one system");
    }

    @Override
    public Optional<Line> correct(String system, int basedOn, Draft corrected) {
        return latest(corrected.id())
                .filter(line -> line.revision() == basedOn)
                .map(line -> add(line.id(), basedOn + 1, corrected, false));
    }

    @Override
    public Optional<Line> strike(String system, UUID id, int basedOn) {
        return latest(id)
                .filter(line -> line.revision() == basedOn)
                .map(line -> add(id, basedOn + 1, new Draft(id, line.at(), line.event(), line.remark()), true));
    }

    @Override
    public List<Line> lines(String system, Span span, Set<Kind> kinds) {
        return written.stream()
                .map(Line::id)
                .distinct()
                .flatMap(id -> latest(id).stream())
                .filter(line -> !line.struck() && kinds.contains(Kind.of(line.event())))
                .sorted(Comparator.comparing(line -> line.at().toInstant()))
                .toList();
    }

    @Override
    public Optional<Line> lastBefore(String system, Instant time, Set<Kind> kinds) {
        return lines(system, new Span(Span.EVER.from(), time), kinds).stream().reduce((before, after) -> after);
    }

    @Override
    public List<Line> history(String system, UUID id) {
        return written.stream().filter(line -> line.id().equals(id)).toList();
    }

    @Override
    public List<Line> everything(String system) {
        return List.copyOf(written);
    }

    @Override
    public int restore(String system, List<Line> revisions) {
        calls++;
        List<Line> added = new ArrayList<>();
        for (Line line : revisions) {
            Optional<Line> here = written.stream()
                    .filter(kept -> kept.id().equals(line.id()) && kept.revision() == line.revision())
                    .findFirst();
            if (here.isPresent() && !here.get().equals(line)) {
                throw new IllegalArgumentException("another content under the same revision");
            } else if (here.isEmpty()) {
                added.add(line);
            }
        }
        written.addAll(added);
        return added.size();
    }

    @Override
    public void append(String system, Probe probe, List<Value> values) {
        calls++;
        TreeMap<Instant, Double> kept = probes.computeIfAbsent(probe, none -> new TreeMap<>());
        values.forEach(value -> kept.put(value.at(), value.value()));
    }

    @Override
    public List<Probe> probes(String system) {
        return probes.keySet().stream()
                .sorted(Comparator.comparing(Probe::quantity)
                        .thenComparing(Probe::method)
                        .thenComparing(Probe::place))
                .toList();
    }

    @Override
    public List<Value> values(String system, Probe probe, Span span) {
        List<Value> values = new ArrayList<>();
        probes.getOrDefault(probe, new TreeMap<>())
                .subMap(span.from(), true, span.to(), false)
                .forEach((at, value) -> values.add(new Value(at, value)));
        return values;
    }

    @Override
    public List<Bin> bins(String system, Probe probe, Span span, int most) {
        List<Value> values = values(system, probe, span);
        for (ChronoUnit length : List.of(ChronoUnit.NANOS, ChronoUnit.MINUTES, ChronoUnit.HOURS)) {
            List<Bin> bins = bins(values, length);
            if (bins.size() <= most) {
                return bins;
            }
        }
        return bins(values, ChronoUnit.DAYS);
    }

    private static List<Bin> bins(List<Value> values, ChronoUnit length) {
        Map<Instant, DoubleSummaryStatistics> bins = new TreeMap<>();
        for (Value value : values) {
            bins.computeIfAbsent(value.at().truncatedTo(length), none -> new DoubleSummaryStatistics())
                    .accept(value.value());
        }
        return bins.entrySet().stream()
                .map(bin -> new Bin(
                        bin.getKey(),
                        (int) bin.getValue().getCount(),
                        bin.getValue().getMin(),
                        bin.getValue().getAverage(),
                        bin.getValue().getMax()))
                .toList();
    }

    @Override
    public String keep(String system, Photo photo) {
        calls++;
        String name =
                UUID.nameUUIDFromBytes(photo.bytes()) + "." + photo.mediaType().replaceFirst(".*/", "");
        photos.putIfAbsent(name, photo);
        return name;
    }

    @Override
    public Optional<Photo> find(String system, String name) {
        return Optional.ofNullable(photos.get(name));
    }

    Set<String> photoNames() {
        return photos.keySet();
    }
}
