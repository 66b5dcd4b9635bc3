package org.tidewright.store.database;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;
import static org.assertj.core.api.Assumptions.assumeThat;
import static org.tidewright.store.Samples.ALL;
import static org.tidewright.store.Samples.REEF;
import static org.tidewright.store.Samples.draft;
import static org.tidewright.store.Samples.drafts;

import java.io.RandomAccessFile;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.tidewright.husbandry.journal.Line;
import org.tidewright.husbandry.journal.Span;
import org.tidewright.store.Store;
import org.tidewright.store.TestClock;

/** Which files can be opened, and what is said of the others. */
class OpeningTest {
    @TempDir
    private Path folder;

    private Store open(String name) {
        return Store.open(folder.resolve(name), new TestClock());
    }

    private void assertRefused(String name, StoreFailed.Reason reason, String sentence) {
        assertThatExceptionOfType(StoreFailed.class)
                .isThrownBy(() -> open(name))
                .satisfies(failure -> assertThat(failure.reason()).isEqualTo(reason))
                .withMessageStartingWith(folder.resolve(name) + ": ")
                .withMessageContaining(sentence);
    }

    /** Runs statements as another program would. */
    private void inFile(String name, String... statements) throws Exception {
        try (Connection connection = DriverManager.getConnection("jdbc:sqlite:" + folder.resolve(name))) {
            for (String statement : statements) {
                Sqlite.run(connection, statement);
            }
        }
    }

    @Test
    void aFileIsMadeAndOpenedAgainUnderAnyName() {
        for (String name : List.of("reef.db", "my reef? 100%#1;x=1&mode=ro.db", "Aquarium größer 水族.db", "file:a")) {
            Line line;
            try (Store store = open(name)) {
                line = store.journal().write(REEF, draft("äöü 水"));
            }
            assertThat(folder.resolve(name)).isRegularFile();
            try (Store store = open(name)) {
                assertThat(store.journal().everything(REEF)).containsExactly(line);
            }
        }
    }

    @Test
    void aClosedFileLeavesNothingBesideIt() throws Exception {
        try (Store store = open("reef.db")) {
            store.journal().write(REEF, draft());
            store.journal().everything(REEF);
        }
        try (var files = Files.list(folder)) {
            assertThat(files).containsExactly(folder.resolve("reef.db"));
        }
    }

    @Test
    void anEmptyFileIsTakenForANewOne() throws Exception {
        Files.createFile(folder.resolve("reef.db"));
        try (Store store = open("reef.db")) {
            assertThat(store.journal().everything(REEF)).isEmpty();
        }
    }

    @Test
    void aFileOfAnOlderVersionIsBroughtUpToDateWithAllThatIsInIt() throws Exception {
        inFile(
                "reef.db",
                Schema.text(Schema.SCRIPTS.get(0)),
                "PRAGMA application_id = " + Sqlite.APPLICATION,
                "PRAGMA user_version = 1",
                "INSERT INTO line VALUES (1, 'harbour room', '5f1e0c6c-1f3c-4d11-8e8b-5f6d6e0f0001', 1, 1, 0, 0, 0,"
                        + " 'feeding', '', 0, 1, 0, 0)",
                "INSERT INTO feeding VALUES (1, 'frozen mysis', 0.0015)");
        try (Store store = open("reef.db")) {
            assertThat(store.journal().lines(REEF, Span.EVER, ALL)).hasSize(1);
            assertThat(store.probes().probes(REEF)).isEmpty();
            assertThat(store.faults()).isEmpty();
        }
    }

    @Test
    void aFileOfANewerVersionIsRefusedAndLeftAsItIs() throws Exception {
        open("reef.db").close();
        inFile("reef.db", "PRAGMA user_version = 99");
        byte[] before = Files.readAllBytes(folder.resolve("reef.db"));
        assertRefused("reef.db", StoreFailed.Reason.NEWER, "its tables are at step 99");
        assertThat(folder.resolve("reef.db")).hasBinaryContent(before);
    }

    @Test
    void theFileOfAnotherProgramIsRefusedAndLeftAsItIs() throws Exception {
        inFile("other.db", "CREATE TABLE songs (title TEXT)");
        byte[] before = Files.readAllBytes(folder.resolve("other.db"));
        assertRefused("other.db", StoreFailed.Reason.FOREIGN, "it is no file of Tidewright's");
        assertThat(folder.resolve("other.db")).hasBinaryContent(before);
        inFile("marked.db", "PRAGMA application_id = 1");
        assertRefused("marked.db", StoreFailed.Reason.FOREIGN, "it is no file of Tidewright's");
    }

    @Test
    void aFileThatIsNoDatabaseIsRefusedAndLeftAsItIs() throws Exception {
        Path text = Files.writeString(folder.resolve("plan.yaml"), "name: harbour room\n".repeat(500));
        byte[] before = Files.readAllBytes(text);
        assertRefused("plan.yaml", StoreFailed.Reason.FOREIGN, "it is no file of Tidewright's");
        assertThat(text).hasBinaryContent(before);
    }

    @Test
    void aFolderThatIsNotThereIsSaidSo() {
        assertRefused("nowhere/reef.db", StoreFailed.Reason.UNREACHABLE, "See whether its folder exists");
        assertRefused(".", StoreFailed.Reason.UNREACHABLE, "it cannot be reached");
    }

    @Test
    void aFileThatMayNotBeWrittenIsRefused() throws Exception {
        open("reef.db").close();
        assertThat(folder.resolve("reef.db").toFile().setWritable(false)).isTrue();
        assumeThat(Files.isWritable(folder.resolve("reef.db")))
                .as("root may write anything")
                .isFalse();
        assertRefused("reef.db", StoreFailed.Reason.READ_ONLY, "it may not be written");
    }

    @Test
    void aFileDamagedInTheMiddleIsSaidToBeWhereverItIsRead() throws Exception {
        try (Store store = open("reef.db")) {
            store.journal().writeAll(REEF, drafts(5000), done -> {});
        }
        damage(folder.resolve("reef.db"));
        try (Store store = open("reef.db")) {
            assertThat(store.faults()).isNotEmpty();
            assertThatExceptionOfType(StoreFailed.class)
                    .isThrownBy(() -> store.journal().everything(REEF))
                    .satisfies(failure -> assertThat(failure.reason()).isEqualTo(StoreFailed.Reason.DAMAGED))
                    .withMessageContaining("take the newest copy that is whole in its place");
            assertThatExceptionOfType(StoreFailed.class)
                    .isThrownBy(() -> store.copyTo(folder.resolve("copy.db")))
                    .satisfies(failure -> assertThat(failure.reason()).isEqualTo(StoreFailed.Reason.DAMAGED));
        }
        try (var files = Files.list(folder)) {
            assertThat(files).containsExactly(folder.resolve("reef.db"));
        }
    }

    /** Noise over the third quarter of the file. */
    private static void damage(Path file) throws Exception {
        try (RandomAccessFile bytes = new RandomAccessFile(file.toFile(), "rw")) {
            byte[] noise = new byte[(int) (bytes.length() / 4)];
            new Random(1).nextBytes(noise);
            bytes.seek(bytes.length() / 2);
            bytes.write(noise);
        }
    }

    @Test
    void aRowThatSaysWhatCannotBeIsTakenForDamage() throws Exception {
        try (Store store = open("reef.db")) {
            store.journal().write(REEF, draft());
        }
        inFile("reef.db", "UPDATE line SET kind = 'reading'");
        try (Store store = open("reef.db")) {
            assertThatExceptionOfType(StoreFailed.class)
                    .isThrownBy(() -> store.journal().everything(REEF))
                    .withMessageContaining("line 1 has no row in reading");
        }
        inFile("reef.db", "INSERT INTO reading VALUES (1, 'happiness', 8.1, 'dkh', NULL)");
        try (Store store = open("reef.db")) {
            assertThatExceptionOfType(StoreFailed.class)
                    .isThrownBy(() -> store.journal().everything(REEF))
                    .satisfies(failure -> assertThat(failure.reason()).isEqualTo(StoreFailed.Reason.DAMAGED))
                    .withMessageContaining("row 1 of reading: no quantity is called “happiness”");
        }
    }

    @Test
    void manyMayOpenANewFileAtOnce() throws Exception {
        ExecutorService threads = Executors.newFixedThreadPool(6);
        try {
            for (int round = 0; round < 10; round++) {
                String name = "reef " + round + ".db";
                List<Future<Store>> opened = new ArrayList<>();
                for (int i = 0; i < 6; i++) {
                    opened.add(threads.submit(() -> open(name)));
                }
                for (Future<Store> each : opened) {
                    each.get().journal().write(REEF, draft());
                }
                for (Future<Store> each : opened) {
                    assertThat(each.get().journal().everything(REEF)).hasSize(6);
                    each.get().close();
                }
            }
        } finally {
            threads.shutdownNow();
        }
    }
}
