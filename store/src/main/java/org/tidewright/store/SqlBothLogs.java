package org.tidewright.store;

import java.time.Clock;
import java.util.List;
import java.util.Map;
import java.util.function.IntConsumer;
import org.tidewright.husbandry.journal.BothLogs;
import org.tidewright.husbandry.journal.Draft;
import org.tidewright.husbandry.journal.ProbeLog.Probe;
import org.tidewright.husbandry.journal.ProbeLog.Value;
import org.tidewright.store.database.Database;
import org.tidewright.store.journal.SqlJournal;
import org.tidewright.store.probe.SqlProbeLog;

/** Lines and probes' values written in one transaction. */
final class SqlBothLogs implements BothLogs {
    private final Database database;
    private final Clock clock;

    SqlBothLogs(Database database, Clock clock) {
        this.database = database;
        this.clock = clock;
    }

    @Override
    public int writeAll(String system, List<Draft> drafts, Map<Probe, List<Value>> values, IntConsumer progress) {
        return database.write(sql -> {
            for (Map.Entry<Probe, List<Value>> probe : values.entrySet()) {
                SqlProbeLog.append(sql, system, probe.getKey(), probe.getValue());
            }
            return SqlJournal.writeAll(sql, system, drafts, clock.instant(), progress);
        });
    }
}
