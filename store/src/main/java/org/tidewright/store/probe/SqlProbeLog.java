package org.tidewright.store.probe;

import java.sql.SQLDataException;
import java.sql.SQLException;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.tidewright.husbandry.journal.ProbeLog;
import org.tidewright.husbandry.journal.Span;
import org.tidewright.plan.method.WaterQuantity;
import org.tidewright.store.database.Database;
import org.tidewright.store.database.Moment;
import org.tidewright.store.database.Row;
import org.tidewright.store.database.Sql;

/**
 * Probes' records in a database. Times are kept to the millisecond, what is finer is cut off; days are those of UTC. Where
 * more days than were asked for have values, all of those days are given: there is nothing coarser.
 */
public final class SqlProbeLog implements ProbeLog {
    private static final Comparator<Probe> BY_NAME = Comparator.comparing(Probe::place)
            .thenComparing(probe -> probe.quantity().key())
            .thenComparing(Probe::method);

    /** How many values are made ready to be written at once: memory does not grow with what is appended. */
    private static final int STRIDE = 10_000;

    private final Database database;

    public SqlProbeLog(Database database) {
        this.database = database;
    }

    @Override
    public void append(String system, Probe probe, List<Value> values) {
        if (!values.isEmpty()) {
            database.write(sql -> append(sql, system, probe, values));
        }
    }

    /**
     * The same within a transaction that writes more than one probe's values.
     *
     * @return how many values were given
     */
    public static int append(Sql sql, String system, Probe probe, List<Value> values) throws SQLException {
        if (values.isEmpty()) {
            return 0;
        }
        values.forEach(value -> mustBeKeepable(probe, value));
        Optional<Long> known = number(sql, system, probe);
        long number = known.isPresent() ? known.get() : begin(sql, system, probe);
        for (int done = 0; done < values.size(); done += STRIDE) {
            write(sql, number, values.subList(done, Math.min(done + STRIDE, values.size())));
        }
        Summaries.renew(sql, number, values);
        return values.size();
    }

    private static void write(Sql sql, long number, List<Value> values) throws SQLException {
        List<@Nullable Object[]> rows = new ArrayList<>();
        for (Value value : values) {
            rows.add(new Object[] {number, Moment.of(value.at()).ms(), value.value()});
        }
        sql.changeAll(
                "INSERT INTO probe_value (probe_no, at_ms, value) VALUES (?, ?, ?)"
                        + " ON CONFLICT (probe_no, at_ms) DO UPDATE SET value = excluded.value",
                rows);
    }

    private static void mustBeKeepable(Probe probe, Value value) {
        Moment.of(value.at());
        if (!Double.isFinite(value.value())) {
            throw new IllegalArgumentException(
                    "the probe of " + probe.quantity().words() + " “" + probe.place() + "” says " + value.value()
                            + " at " + value.at() + ": a number is expected, leave this value out");
        }
    }

    private static long begin(Sql sql, String system, Probe probe) throws SQLException {
        sql.change(
                "INSERT INTO probe (system, quantity, method, place, unit) VALUES (?, ?, ?, ?, ?)",
                system,
                probe.quantity().key(),
                probe.method(),
                probe.place(),
                probe.quantity().held());
        return number(sql, system, probe).orElseThrow();
    }

    private static Optional<Long> number(Sql sql, String system, Probe probe) throws SQLException {
        return sql.first(
                "SELECT probe_no FROM probe WHERE system = ? AND quantity = ? AND method = ? AND place = ?",
                row -> row.whole("probe_no"),
                system,
                probe.quantity().key(),
                probe.method(),
                probe.place());
    }

    @Override
    public List<Probe> probes(String system) {
        List<Probe> probes = new ArrayList<>(database.<List<Probe>>read(
                sql -> sql.list("SELECT * FROM probe WHERE system = ?", SqlProbeLog::probe, system)));
        probes.sort(BY_NAME);
        return probes;
    }

    private static Probe probe(Row row) throws SQLException {
        String key = row.text("quantity");
        WaterQuantity quantity = WaterQuantity.ofKey(key)
                .orElseThrow(() -> new SQLDataException("no quantity of a probe is called “" + key + "”"));
        return new Probe(quantity, row.text("method"), row.text("place"));
    }

    @Override
    public List<Value> values(String system, Probe probe, Span span) {
        return read(system, probe, values -> values.within(firstMs(span), endMs(span)));
    }

    @Override
    public List<Bin> bins(String system, Probe probe, Span span, int most) {
        if (most < 1) {
            throw new IllegalArgumentException("a chart of " + most + " stretches shows nothing: ask for one or more");
        }
        return read(system, probe, values -> values.bins(firstMs(span), endMs(span), most));
    }

    private <T> List<T> read(String system, Probe probe, Reading<T> reading) {
        return database.read(sql -> {
            Optional<Long> number = number(sql, system, probe);
            return number.isEmpty() ? List.of() : reading.of(new ProbeValues(sql, number.get()));
        });
    }

    private interface Reading<T> {
        List<T> of(ProbeValues values) throws SQLException;
    }

    private static long firstMs(Span span) {
        return Moment.end(span.from()).firstMs();
    }

    private static long endMs(Span span) {
        return Moment.end(span.to()).firstMs();
    }
}
