package org.tidewright.store;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.tidewright.store.Samples.REEF;
import static org.tidewright.store.Samples.draft;

import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.HexFormat;
import java.util.List;
import java.util.concurrent.atomic.AtomicBoolean;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.tidewright.husbandry.journal.Line;
import org.tidewright.husbandry.journal.Photos.Photo;
import org.tidewright.husbandry.journal.ProbeLog.Probe;
import org.tidewright.husbandry.journal.ProbeLog.Value;
import org.tidewright.husbandry.journal.Span;
import org.tidewright.plan.method.WaterQuantity;
import org.tidewright.store.database.StoreFailed;

class StoreCopyTest {
    private static final Probe SUMP = new Probe(WaterQuantity.TEMPERATURE, "probe", "sump");

    @TempDir
    private Path folder;

    private Store store;

    @BeforeEach
    void open() {
        store = Store.open(folder.resolve("reef.db"), new TestClock());
    }

    @AfterEach
    void close() {
        store.close();
    }

    @Test
    void aCopyHoldsAllThatIsInTheFile() {
        Line line = store.journal().write(REEF, draft());
        List<Value> values = List.of(new Value(Instant.EPOCH, 25));
        store.probes().append(REEF, SUMP, values);
        byte[] picture = HexFormat.of().parseHex("ffd8ffe0");
        String name = store.photos().keep(REEF, new Photo("image/jpeg", picture));
        store.copyTo(folder.resolve("copy of 'reef'? %.db"));
        try (Store copy = Store.open(folder.resolve("copy of 'reef'? %.db"), new TestClock())) {
            assertThat(copy.journal().everything(REEF)).containsExactly(line);
            assertThat(copy.probes().values(REEF, SUMP, Span.EVER)).isEqualTo(values);
            assertThat(copy.photos().find(REEF, name).orElseThrow().bytes()).isEqualTo(picture);
            assertThat(copy.faults()).isEmpty();
        }
    }

    @Test
    void aCopyTakenWhileOthersWriteIsOfOneMoment() throws Exception {
        AtomicBoolean enough = new AtomicBoolean();
        Thread writer = new Thread(() -> {
            while (!enough.get()) {
                store.journal().writeAll(REEF, Samples.drafts(10), done -> {});
            }
        });
        writer.start();
        try {
            for (int i = 0; i < 5; i++) {
                int before = store.journal().everything(REEF).size();
                Path target = folder.resolve("copy " + i + ".db");
                store.copyTo(target);
                try (Store copy = Store.open(target, new TestClock())) {
                    int copied = copy.journal().everything(REEF).size();
                    assertThat(copied % 10).isZero();
                    assertThat(copied).isGreaterThanOrEqualTo(before);
                    assertThat(copied)
                            .isLessThanOrEqualTo(
                                    store.journal().everything(REEF).size());
                }
            }
        } finally {
            enough.set(true);
            writer.join();
        }
    }

    @Test
    void aCopyDoesNotTakeThePlaceOfAFile() throws Exception {
        Path target = Files.writeString(folder.resolve("copy.db"), "dear");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> store.copyTo(target))
                .withMessageContaining("exists already");
        assertThat(target).hasContent("dear");
    }

    @Test
    void aCopyThatCannotBeWrittenIsSaidSo() {
        assertThatExceptionOfType(StoreFailed.class)
                .isThrownBy(() -> store.copyTo(folder.resolve("nowhere/copy.db")))
                .satisfies(failure -> assertThat(failure.reason()).isEqualTo(StoreFailed.Reason.UNREACHABLE))
                .withMessageContaining("nowhere");
    }
}
