package org.tidewright.husbandry.spreadsheet;

import java.time.Instant;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.function.IntConsumer;
import org.jspecify.annotations.Nullable;
import org.tidewright.husbandry.journal.Draft;
import org.tidewright.husbandry.journal.ProbeLog.Probe;
import org.tidewright.husbandry.spreadsheet.SheetPass.Found;
import org.tidewright.husbandry.spreadsheet.SheetPass.Series;
import org.tidewright.plan.fault.Fault;
import org.tidewright.plan.method.TestMethod;
import org.tidewright.plan.method.TestMethods;
import org.tidewright.plan.method.WaterQuantity;

/** Counts what a sheet holds and collects what is wrong with it, without keeping its numbers as drafts. */
final class SheetCheck implements SheetPass.Sink {
    private static final int MOST_TOLD = 200;
    private static final int MOST_DRAFTS = 20;

    private final Mapping mapping;
    private final List<Series> series;
    private final List<SeriesTally> tallies = new ArrayList<>();
    private final List<Found> firstFound = new ArrayList<>();
    private final List<Fault> bad = new ArrayList<>();
    private final List<String> comesTwice = new ArrayList<>();
    private final Rows rows;
    private int badCount;
    private int comesTwiceCount;
    private int remarks;

    /** Tells now and then how many rows are done. */
    static final class Rows {
        private static final int STEP = 1000;
        private final IntConsumer progress;
        private int done;

        Rows(IntConsumer progress) {
            this.progress = progress;
        }

        void oneMore() {
            if (++done % STEP == 0) {
                progress.accept(done);
            }
        }

        int done() {
            return done;
        }
    }

    SheetCheck(Mapping mapping, List<Series> series, Rows rows) {
        this.mapping = mapping;
        this.series = series;
        this.rows = rows;
        series.forEach(one -> tallies.add(new SeriesTally()));
    }

    @Override
    public void found(Found found) {
        Measured measured = found.series().measured();
        double written = found.reading().unit().equals(measured.unit())
                ? found.reading().written()
                : measured.unit().fromHeld(found.reading().value());
        tallies.get(found.series().index()).add(found.at().toInstant(), written);
        if (firstFound.size() < MOST_TOLD) {
            firstFound.add(found);
        }
    }

    @Override
    public void remark(int line, OffsetDateTime at, String words) {
        remarks++;
    }

    @Override
    public void comesTwice(int line, OffsetDateTime at) {
        if (comesTwiceCount++ < MOST_TOLD) {
            comesTwice.add("line " + line + ": the clock showed " + at.toLocalDateTime() + " twice; taken as " + at);
        }
    }

    @Override
    public void bad(Fault fault) {
        if (badCount++ < MOST_TOLD) {
            bad.add(fault);
        }
    }

    @Override
    public void rowDone() {
        rows.oneMore();
    }

    /** Under which probe the numbers of each series are kept; null for readings. */
    @Nullable
    Probe[] probes() {
        @Nullable Probe[] probes = new Probe[series.size()];
        for (Series one : series) {
            Measured measured = one.measured();
            boolean probe = measured.kept() == Kept.PROBE
                    || (measured.kept() == Kept.BY_PACE
                            && tallies.get(one.index()).isAProbes());
            if (probe) {
                probes[one.index()] = new Probe(measured.quantity(), method(measured), measured.place());
            }
        }
        return probes;
    }

    /** What was said, or the only method that reads this quantity by itself all day; empty where neither is. */
    private static String method(Measured measured) {
        return measured.method() != null ? measured.method() : onlyContinuous(measured.quantity());
    }

    private static String onlyContinuous(WaterQuantity quantity) {
        List<TestMethod> continuous =
                TestMethods.of(quantity).stream().filter(TestMethod::continuous).toList();
        return continuous.size() == 1 ? continuous.get(0).key() : "";
    }

    /** What must be said about probes before they can be kept. */
    List<String> questionsAboutProbes() {
        List<String> questions = new ArrayList<>();
        Set<Probe> seen = new HashSet<>();
        @Nullable Probe[] probes = probes();
        for (Series one : series) {
            Probe probe = probes[one.index()];
            if (probe == null) {
                continue;
            }
            if (probe.method().isEmpty()) {
                questions.add("“" + one.label() + "” comes as fast as from a probe: by which method is it measured?");
            } else if (!seen.add(probe)) {
                questions.add("“" + one.label()
                        + "” would be the same probe as another column: where does each of them stand?");
            }
        }
        return questions;
    }

    List<Fault> bad() {
        return List.copyOf(bad);
    }

    int badCount() {
        return badCount;
    }

    Preview preview(String system) {
        List<String> questions = new ArrayList<>(mapping.questions());
        questions.addAll(questionsAboutProbes());
        @Nullable Probe[] probes = probes();
        List<Preview.Summary> summaries = new ArrayList<>();
        for (Series one : series) {
            summaries.add(summary(one, probes[one.index()], tallies.get(one.index())));
        }
        return new Preview(
                questions,
                rows.done(),
                remarks,
                summaries,
                tallies.stream()
                        .filter(tally -> tally.count() > 0)
                        .map(SeriesTally::first)
                        .min(Instant::compareTo)
                        .orElse(null),
                tallies.stream()
                        .filter(tally -> tally.count() > 0)
                        .map(SeriesTally::last)
                        .max(Instant::compareTo)
                        .orElse(null),
                firstDrafts(system, probes),
                bad(),
                badCount,
                List.copyOf(comesTwice),
                comesTwiceCount);
    }

    private List<Draft> firstDrafts(String system, @Nullable Probe[] probes) {
        DraftIds ids = new DraftIds(system);
        return firstFound.stream()
                .filter(found -> probes[found.series().index()] == null)
                .limit(MOST_DRAFTS)
                .map(found -> new Draft(ids.of(found.at(), found.reading()), found.at(), found.reading(), ""))
                .toList();
    }

    private static Preview.Summary summary(Series one, @Nullable Probe probe, SeriesTally tally) {
        boolean any = tally.count() > 0;
        return new Preview.Summary(
                one.label(),
                one.measured(),
                probe,
                tally.count(),
                any ? tally.least() : Double.NaN,
                any ? tally.median() : Double.NaN,
                any ? tally.most() : Double.NaN,
                tally.repeated(),
                tally.firstRepeated(),
                tally.pace());
    }
}
