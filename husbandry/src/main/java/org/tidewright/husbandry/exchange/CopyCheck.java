package org.tidewright.husbandry.exchange;

import java.time.Instant;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.UUID;
import org.tidewright.husbandry.journal.Line;
import org.tidewright.husbandry.journal.Photos.Photo;
import org.tidewright.husbandry.journal.ProbeLog.Probe;
import org.tidewright.husbandry.journal.ProbeLog.Value;
import org.tidewright.husbandry.journal.Span;

/** Looks a copy through against itself and against what is kept already. It holds the lines, but no values and no pictures. */
final class CopyCheck implements CopyReader.Listener {
    private final KeptSystem into;
    private final Faults faults;
    private final TreeMap<Integer, Placed> byEntry = new TreeMap<>();
    private final Set<String> photoNames = new HashSet<>();
    private String system = "";
    private long probeValues;

    private record Placed(Place place, Line line) {}

    private record Revision(UUID id, int number) {}

    CopyCheck(KeptSystem into, Faults faults) {
        this.into = into;
        this.faults = faults;
    }

    @Override
    public void system(String name) {
        system = name;
    }

    @Override
    public void line(Place place, int entry, Line line) {
        if (byEntry.putIfAbsent(entry, new Placed(place, line)) != null) {
            faults.add(place.fault("a second entry " + entry, "each entry once, in the order of writing", ""));
        }
    }

    @Override
    public void values(Place place, Probe probe, List<Value> values) {
        probeValues += values.size();
        Map<Instant, Double> kept = kept(probe, values);
        for (Value value : values) {
            Double here = kept.get(value.at());
            if (here != null && !here.equals(value.value())) {
                faults.add(place.fault(
                        value.value() + " at " + value.at() + " from the "
                                + probe.quantity().words() + " probe “" + probe.place() + "”",
                        here + ", which is kept here for that time",
                        "Read the copy into another system, or take the probe out of it."));
                return;
            }
        }
    }

    private Map<Instant, Double> kept(Probe probe, List<Value> values) {
        if (!into.probes().probes(into.name()).contains(probe)) {
            return Map.of();
        }
        Instant first = values.stream().map(Value::at).min(Instant::compareTo).orElseThrow();
        Instant last = values.stream().map(Value::at).max(Instant::compareTo).orElseThrow();
        Map<Instant, Double> kept = new HashMap<>();
        into.probes()
                .values(into.name(), probe, new Span(first, last.plusNanos(1)))
                .forEach(value -> kept.put(value.at(), value.value()));
        return kept;
    }

    @Override
    public void photo(Place place, String name, Photo photo) {
        if (!photoNames.add(name)) {
            faults.add(place.fault("a second photo “" + name + "”", "each photo once", ""));
        }
    }

    /** What can only be said when all lines were seen: their revisions follow one another, and contradict none kept here. */
    void end() {
        Map<Revision, Line> here = new HashMap<>();
        into.journal().everything(into.name()).forEach(line -> here.put(revision(line), line));
        Map<UUID, Integer> latest = new HashMap<>();
        byEntry.values().forEach(entry -> {
            Line line = entry.line();
            int before = latest.getOrDefault(line.id(), 0);
            if (line.revision() != before + 1) {
                faults.add(entry.place()
                        .fault(
                                "revision " + line.revision() + " of the line " + line.id(),
                                "revision " + (before + 1) + ", the next one of this line",
                                "Each line needs all its revisions, once and in order."));
            }
            latest.put(line.id(), line.revision());
            Line kept = here.get(revision(line));
            if (kept != null && !kept.equals(line)) {
                faults.add(entry.place()
                        .fault(
                                "revision " + line.revision() + " of the line " + line.id(),
                                "what is kept here under the same revision, which is something else",
                                "Read the copy into another system."));
            }
        });
    }

    private static Revision revision(Line line) {
        return new Revision(line.id(), line.revision());
    }

    String system() {
        return system;
    }

    List<Line> lines() {
        List<Line> lines = new ArrayList<>();
        byEntry.values().forEach(entry -> lines.add(entry.line()));
        return lines;
    }

    long probeValues() {
        return probeValues;
    }

    int photos() {
        return photoNames.size();
    }
}
