package org.tidewright.store.probe;

import java.sql.SQLException;
import java.util.ArrayList;
import java.util.List;
import java.util.SortedSet;
import java.util.TreeSet;
import org.jspecify.annotations.Nullable;
import org.tidewright.husbandry.journal.ProbeLog.Value;
import org.tidewright.store.database.Sql;

/** Keeps what is said of hours and days in step with the values: those that were touched are computed anew. */
final class Summaries {
    private static final String REPLACE =
            " ON CONFLICT (probe_no, length_s, from_ms) DO UPDATE SET value_count = excluded.value_count,"
                    + " least = excluded.least, sum = excluded.sum, most = excluded.most";

    private static final String OF_VALUES =
            "INSERT INTO probe_summary (probe_no, length_s, from_ms, value_count, least, sum, most)"
                    + " SELECT probe_no, ?, ?, count(*), min(value), sum(value), max(value) FROM probe_value"
                    + " WHERE probe_no = ? AND at_ms >= ? AND at_ms < ? GROUP BY probe_no"
                    + REPLACE;

    private static final String OF_HOURS =
            "INSERT INTO probe_summary (probe_no, length_s, from_ms, value_count, least, sum, most)"
                    + " SELECT probe_no, ?, ?, sum(value_count), min(least), sum(sum), max(most) FROM probe_summary"
                    + " WHERE probe_no = ? AND from_ms >= ? AND from_ms < ? AND length_s = " + Stretch.HOUR.seconds()
                    + " GROUP BY probe_no" + REPLACE;

    private Summaries() {}

    /** Computes the hours and the days of these values anew. */
    static void renew(Sql sql, long probe, List<Value> values) throws SQLException {
        renew(sql, OF_VALUES, Stretch.HOUR, probe, values);
        renew(sql, OF_HOURS, Stretch.DAY, probe, values);
    }

    private static void renew(Sql sql, String statement, Stretch stretch, long probe, List<Value> values)
            throws SQLException {
        SortedSet<Long> touched = new TreeSet<>();
        values.forEach(value -> touched.add(stretch.floor(value.at().toEpochMilli())));
        List<@Nullable Object[]> rows = new ArrayList<>();
        touched.forEach(from -> rows.add(new Object[] {stretch.seconds(), from, probe, from, from + stretch.ms()}));
        sql.changeAll(statement, rows);
    }
}
