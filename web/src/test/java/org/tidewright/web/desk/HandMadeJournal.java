package org.tidewright.web.desk;

import java.time.Clock;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import java.util.function.IntConsumer;
import org.tidewright.husbandry.journal.Draft;
import org.tidewright.husbandry.journal.Journal;
import org.tidewright.husbandry.journal.Kind;
import org.tidewright.husbandry.journal.Line;
import org.tidewright.husbandry.journal.Span;

/** A journal in memory, so that pages can be tested without a store. */
public final class HandMadeJournal implements Journal {
    private final Clock clock;
    private final Map<String, Map<UUID, List<Line>>> systems = new LinkedHashMap<>();

    public HandMadeJournal(Clock clock) {
        this.clock = clock;
    }

    private Map<UUID, List<Line>> of(String system) {
        return systems.computeIfAbsent(system, none -> new LinkedHashMap<>());
    }

    private Line line(Draft draft, int revision, boolean struck) {
        return new Line(draft.id(), revision, draft.at(), draft.event(), draft.remark(), struck, clock.instant());
    }

    @Override
    public synchronized Line write(String system, Draft draft) {
        List<Line> history = of(system).computeIfAbsent(draft.id(), none -> new ArrayList<>());
        if (history.isEmpty()) {
            history.add(line(draft, 1, false));
        }
        return history.get(history.size() - 1);
    }

    @Override
    public synchronized int writeAll(String system, List<Draft> drafts, IntConsumer progress) {
        int before = of(system).size();
        drafts.forEach(draft -> write(system, draft));
        return of(system).size() - before;
    }

    @Override
    public synchronized int writeTogether(Map<String, List<Draft>> drafts) {
        return drafts.entrySet().stream()
                .mapToInt(ofSystem -> writeAll(ofSystem.getKey(), ofSystem.getValue(), done -> {}))
                .sum();
    }

    @Override
    public synchronized Optional<Line> correct(String system, int basedOn, Draft corrected) {
        List<Line> history = of(system).getOrDefault(corrected.id(), List.of());
        if (history.size() != basedOn || history.isEmpty()) {
            return Optional.empty();
        }
        history.add(line(corrected, basedOn + 1, false));
        return Optional.of(history.get(basedOn));
    }

    @Override
    public synchronized Optional<Line> strike(String system, UUID id, int basedOn) {
        List<Line> history = of(system).getOrDefault(id, List.of());
        if (history.size() != basedOn || history.isEmpty()) {
            return Optional.empty();
        }
        Line last = history.get(basedOn - 1);
        history.add(line(new Draft(id, last.at(), last.event(), last.remark()), basedOn + 1, true));
        return Optional.of(history.get(basedOn));
    }

    @Override
    public synchronized List<Line> lines(String system, Span span, Set<Kind> kinds) {
        return of(system).values().stream()
                .map(history -> history.get(history.size() - 1))
                .filter(line -> !line.struck() && kinds.contains(Kind.of(line.event())))
                .filter(line -> !line.at().toInstant().isBefore(span.from())
                        && line.at().toInstant().isBefore(span.to()))
                .sorted(Comparator.comparing(line -> line.at().toInstant()))
                .toList();
    }

    @Override
    public Optional<Line> lastBefore(String system, Instant time, Set<Kind> kinds) {
        List<Line> before = lines(system, new Span(Span.EVER.from(), time), kinds);
        return before.isEmpty() ? Optional.empty() : Optional.of(before.get(before.size() - 1));
    }

    @Override
    public synchronized List<Line> history(String system, UUID id) {
        return List.copyOf(of(system).getOrDefault(id, List.of()));
    }

    @Override
    public synchronized List<Line> everything(String system) {
        return of(system).values().stream().flatMap(List::stream).toList();
    }

    @Override
    public synchronized int restore(String system, List<Line> revisions) {
        revisions.forEach(line ->
                of(system).computeIfAbsent(line.id(), none -> new ArrayList<>()).add(line));
        return revisions.size();
    }
}
