package org.tidewright.husbandry.spreadsheet;

import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.tidewright.husbandry.journal.Draft;
import org.tidewright.husbandry.journal.Event;
import org.tidewright.husbandry.journal.ProbeLog.Probe;
import org.tidewright.husbandry.journal.ProbeLog.Value;
import org.tidewright.husbandry.spreadsheet.SheetPass.Found;
import org.tidewright.plan.fault.Fault;

/** Makes drafts and values of a sheet that was checked. */
final class SheetTake implements SheetPass.Sink {
    private final DraftIds ids;
    private final @Nullable Probe[] probes;
    private final SheetCheck.Rows rows;
    private final List<Draft> drafts = new ArrayList<>();
    private final Map<Probe, List<Value>> values = new LinkedHashMap<>();
    private int draftsBeforeRow;

    SheetTake(String system, @Nullable Probe[] probes, SheetCheck.Rows rows) {
        this.ids = new DraftIds(system);
        this.probes = probes;
        this.rows = rows;
    }

    @Override
    public void found(Found found) {
        Probe probe = probes[found.series().index()];
        if (probe == null) {
            drafts.add(new Draft(ids.of(found.at(), found.reading()), found.at(), found.reading(), ""));
        } else {
            values.computeIfAbsent(probe, none -> new ArrayList<>())
                    .add(new Value(found.at().toInstant(), found.reading().value()));
        }
    }

    /** The keeper's words go with the first reading of their row; where it has none, they are an observation. */
    @Override
    public void remark(int line, OffsetDateTime at, String words) {
        if (drafts.size() > draftsBeforeRow) {
            Draft first = drafts.get(draftsBeforeRow);
            drafts.set(draftsBeforeRow, new Draft(first.id(), first.at(), first.event(), words));
        } else {
            drafts.add(new Draft(ids.of(at, words), at, new Event.Observation(words, null), ""));
        }
    }

    @Override
    public void comesTwice(int line, OffsetDateTime at) {}

    /** It was counted before. */
    @Override
    public void bad(Fault fault) {}

    @Override
    public void rowDone() {
        draftsBeforeRow = drafts.size();
        rows.oneMore();
    }

    Taking.Taken taken(SheetCheck check) {
        return new Taking.Taken(drafts, values, check.bad(), check.badCount());
    }
}
