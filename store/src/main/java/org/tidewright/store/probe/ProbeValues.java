package org.tidewright.store.probe;

import java.sql.SQLException;
import java.time.Instant;
import java.util.List;
import org.tidewright.husbandry.journal.ProbeLog.Bin;
import org.tidewright.husbandry.journal.ProbeLog.Value;
import org.tidewright.store.database.Sql;

/** Reads one probe's values and summaries within one transaction. Times are milliseconds, ends without their last. */
final class ProbeValues {
    private static final String WITHIN = " FROM probe_value WHERE probe_no = ? AND at_ms >= ? AND at_ms < ?";

    private final Sql sql;
    private final long probe;

    ProbeValues(Sql sql, long probe) {
        this.sql = sql;
        this.probe = probe;
    }

    List<Value> within(long fromMs, long toMs) throws SQLException {
        return sql.list(
                "SELECT at_ms, value" + WITHIN + " ORDER BY at_ms",
                row -> new Value(Instant.ofEpochMilli(row.whole("at_ms")), row.number("value")),
                probe,
                fromMs,
                toMs);
    }

    /** As many as are wanted at most, one by one if they are few enough, otherwise in the finest stretches that are. */
    List<Bin> bins(long fromMs, long toMs, int most) throws SQLException {
        List<Bin> single = sql.list(
                "SELECT at_ms, value" + WITHIN + " ORDER BY at_ms LIMIT ?",
                row -> single(row.whole("at_ms"), row.number("value")),
                probe,
                fromMs,
                toMs,
                most + 1L);
        if (single.size() <= most) {
            return single;
        }
        for (Stretch stretch : List.of(Stretch.MINUTE, Stretch.HOUR)) {
            Tally tally = new Tally(stretch, most);
            tally(stretch, fromMs, toMs, tally);
            if (!tally.isOverfull()) {
                return tally.bins();
            }
        }
        Tally days = new Tally(Stretch.DAY, Integer.MAX_VALUE);
        tally(Stretch.DAY, fromMs, toMs, days);
        return days.bins();
    }

    private static Bin single(long atMs, double value) {
        return new Bin(Instant.ofEpochMilli(atMs), 1, value, value, value);
    }

    /** Whole stretches come from their summaries; what is cut off at the ends, from the next finer ones. */
    private void tally(Stretch stretch, long fromMs, long toMs, Tally tally) throws SQLException {
        Stretch finer = stretch.finer();
        if (finer == null) {
            tallyValues(fromMs, toMs, tally);
            return;
        }
        long first = stretch.ceiling(fromMs);
        long last = stretch.floor(toMs);
        if (first >= last) {
            tally(finer, fromMs, toMs, tally);
            return;
        }
        tally(finer, fromMs, first, tally);
        tallySummaries(stretch, first, last, tally);
        tally(finer, last, toMs, tally);
    }

    private void tallyValues(long fromMs, long toMs, Tally tally) throws SQLException {
        sql.each(
                "SELECT at_ms, value" + WITHIN + " ORDER BY at_ms",
                row -> {
                    double value = row.number("value");
                    return tally.add(row.whole("at_ms"), 1, value, value, value);
                },
                probe,
                fromMs,
                toMs);
    }

    private void tallySummaries(Stretch stretch, long fromMs, long toMs, Tally tally) throws SQLException {
        sql.each(
                "SELECT from_ms, value_count, least, sum, most FROM probe_summary"
                        + " WHERE probe_no = ? AND length_s = ? AND from_ms >= ? AND from_ms < ? ORDER BY from_ms",
                row -> tally.add(
                        row.whole("from_ms"),
                        Math.toIntExact(row.whole("value_count")),
                        row.number("least"),
                        row.number("sum"),
                        row.number("most")),
                probe,
                stretch.seconds(),
                fromMs,
                toMs);
    }
}
