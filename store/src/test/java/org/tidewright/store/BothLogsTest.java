package org.tidewright.store;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import java.nio.file.Path;
import java.time.Instant;
import java.time.OffsetDateTime;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.tidewright.husbandry.journal.Draft;
import org.tidewright.husbandry.journal.Event;
import org.tidewright.husbandry.journal.ProbeLog.Probe;
import org.tidewright.husbandry.journal.ProbeLog.Value;
import org.tidewright.husbandry.journal.Span;
import org.tidewright.plan.method.WaterQuantity;

class BothLogsTest {
    private static final String REEF = "harbour room";
    private static final Probe SUMP = new Probe(WaterQuantity.TEMPERATURE, "probe", "sump");
    private static final Probe DISPLAY = new Probe(WaterQuantity.TEMPERATURE, "probe", "display");
    private static final Instant NOON = Instant.parse("2026-05-03T12:00:00Z");

    @TempDir
    private Path folder = Path.of("");

    private @Nullable Store opened;

    private Store store() {
        Store store = opened == null ? Store.open(folder.resolve("both.db"), new TestClock()) : opened;
        opened = store;
        return store;
    }

    @BeforeEach
    void open() {
        opened = null;
    }

    @AfterEach
    void close() {
        store().close();
    }

    private static Draft draft(String remark) {
        OffsetDateTime at = OffsetDateTime.parse("2026-05-03T12:00:00+02:00");
        return new Draft(UUID.nameUUIDFromBytes(new byte[] {1}), at, new Event.Fed("pellets", 0.002), remark);
    }

    @Test
    void linesAndValuesAreKeptTogetherAndTheSameAgainAddsNothing() {
        Map<Probe, List<Value>> values = Map.of(SUMP, List.of(new Value(NOON, 25)));
        assertThat(store().both().writeAll(REEF, List.of(draft("")), values, done -> {}))
                .isEqualTo(1);
        assertThat(store().both().writeAll(REEF, List.of(draft("")), values, done -> {}))
                .isZero();
        assertThat(store().journal().everything(REEF)).hasSize(1);
        assertThat(store().probes().values(REEF, SUMP, Span.EVER)).containsExactly(new Value(NOON, 25));
    }

    @Test
    void ifOneValueIsRefusedNeitherTheOthersNorAnyLineIsKept() {
        Map<Probe, List<Value>> values = new LinkedHashMap<>();
        values.put(SUMP, List.of(new Value(NOON, 25)));
        values.put(DISPLAY, List.of(new Value(NOON, Double.NaN)));
        assertThatIllegalArgumentException()
                .isThrownBy(() -> store().both().writeAll(REEF, List.of(draft("")), values, done -> {}));
        assertNothingIsKept();
    }

    @Test
    void ifOneLineIsRefusedNoValueIsKeptEither() {
        Map<Probe, List<Value>> values = Map.of(SUMP, List.of(new Value(NOON, 25)));
        assertThatIllegalArgumentException()
                .isThrownBy(() -> store().both().writeAll(REEF, List.of(draft("nothing \0")), values, done -> {}));
        assertNothingIsKept();
    }

    private void assertNothingIsKept() {
        assertThat(store().journal().everything(REEF)).isEmpty();
        assertThat(store().probes().probes(REEF)).isEmpty();
    }
}
