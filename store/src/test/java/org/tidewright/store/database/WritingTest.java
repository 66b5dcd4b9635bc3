package org.tidewright.store.database;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;
import static org.assertj.core.api.Assertions.assertThatIllegalStateException;
import static org.tidewright.store.Samples.ALL;
import static org.tidewright.store.Samples.REEF;
import static org.tidewright.store.Samples.draft;
import static org.tidewright.store.Samples.drafts;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.tidewright.husbandry.journal.Draft;
import org.tidewright.husbandry.journal.Journal;
import org.tidewright.husbandry.journal.Line;
import org.tidewright.husbandry.journal.Span;
import org.tidewright.store.Store;
import org.tidewright.store.TestClock;
import org.tidewright.store.journal.SqlJournal;

/** What was acknowledged is there, and what failed is not. */
class WritingTest {
    @TempDir
    private Path folder;

    private Database database;
    private Journal journal;

    @BeforeEach
    void open() {
        database = Database.open(folder.resolve("reef.db"));
        journal = new SqlJournal(database, new TestClock());
    }

    @AfterEach
    void close() {
        assertThat(database.faults()).isEmpty();
        database.close();
    }

    private String setting(String name) {
        return database.write(
                        sql -> sql.first("SELECT * FROM pragma_" + name, row -> row.text(name.replace("busy_", ""))))
                .orElseThrow();
    }

    /** Lasts until a write fails: the connection is then made anew. */
    private void limitPages(int most) {
        database.write(sql -> sql.first("PRAGMA max_page_count = " + most, row -> row.whole("max_page_count")));
    }

    @Test
    void everyWriteIsForcedToTheDiskBeforeItIsAcknowledged() {
        assertThat(setting("journal_mode")).isEqualTo("wal");
        assertThat(setting("synchronous"))
                .as("FULL, as sqlite.org/pragma.html numbers it")
                .isEqualTo("2");
        assertThat(setting("foreign_keys")).isEqualTo("1");
        assertThat(setting("busy_timeout")).isEqualTo("10000");
    }

    @Test
    void ofAFullDiskEveryWriteThatFailedIsGoneAndEveryOtherThere() {
        List<Line> acknowledged = new ArrayList<>(List.of(journal.write(REEF, draft())));
        int failed = 0;
        int pages = Integer.parseInt(setting("page_count"));
        for (int more = 0; more < 25; more++) {
            limitPages(pages + more);
            List<Draft> drafts = drafts(100);
            try {
                journal.writeAll(REEF, drafts, done -> {});
                drafts.forEach(draft -> acknowledged.addAll(journal.history(REEF, draft.id())));
            } catch (StoreFailed full) {
                failed++;
                assertThat(full.reason()).isEqualTo(StoreFailed.Reason.FULL);
                assertThat(full).hasMessageContaining("there is no room left to write. Nothing of this was kept");
            }
            assertThat(journal.everything(REEF)).isEqualTo(acknowledged);
        }
        assertThat(failed).isBetween(3, 22);
        journal.write(REEF, draft("after some space was freed"));
        assertThat(journal.lines(REEF, Span.EVER, ALL)).hasSize(acknowledged.size() + 1);
    }

    @Test
    void whatMayNotBeWrittenIsSaidSoAndCanStillBeRead() {
        Line line = journal.write(REEF, draft());
        database.write(sql -> sql.change("PRAGMA query_only = ON"));
        assertThatExceptionOfType(StoreFailed.class)
                .isThrownBy(() -> journal.write(REEF, draft()))
                .satisfies(failure -> assertThat(failure.reason()).isEqualTo(StoreFailed.Reason.READ_ONLY))
                .withMessageContaining("it may not be written");
        assertThat(journal.everything(REEF)).containsExactly(line);
    }

    @Test
    void severalProgramsWriteInTurn() {
        try (Store other = Store.open(folder.resolve("reef.db"), new TestClock())) {
            Line here = journal.write(REEF, draft());
            Line there = other.journal().write(REEF, draft());
            assertThat(journal.everything(REEF)).containsExactly(here, there);
            assertThat(other.journal().correct(REEF, 1, new Draft(here.id(), here.at(), here.event(), "mended")))
                    .isPresent();
            assertThat(journal.strike(REEF, here.id(), 1)).isEmpty();
        }
    }

    @Test
    void aReaderSeesTheFileAsItWasWhenItBegan() {
        Line before = journal.write(REEF, draft());
        long seen = database.read(sql -> {
            long first = count(sql);
            journal.write(REEF, draft());
            assertThat(count(sql)).isEqualTo(first);
            return first;
        });
        assertThat(seen).isEqualTo(1);
        assertThat(journal.everything(REEF)).hasSize(2).startsWith(before);
    }

    private static long count(Sql sql) throws java.sql.SQLException {
        return sql.first("SELECT count(*) AS lines FROM line", row -> row.whole("lines"))
                .orElseThrow();
    }

    @Test
    void aReaderCannotWrite() {
        assertThatExceptionOfType(StoreFailed.class)
                .isThrownBy(() -> database.read(sql -> sql.change("UPDATE line SET stands = 0")))
                .satisfies(failure -> assertThat(failure.reason()).isEqualTo(StoreFailed.Reason.READ_ONLY));
    }

    @Test
    void aWrongStatementIsOurOwnMistakeAndLeavesTheFileAsItWas() {
        Line line = journal.write(REEF, draft());
        assertThatIllegalStateException()
                .isThrownBy(() -> database.write(sql -> {
                    sql.change("UPDATE line SET remark = 'other'");
                    return sql.change("UPDATE no_table SET remark = 'other'");
                }))
                .withMessageContaining("no such table");
        assertThatIllegalStateException()
                .isThrownBy(() -> database.write(sql -> sql.change("UPDATE line SET struck = 2")))
                .withMessageContaining("CHECK constraint failed");
        assertThatIllegalStateException()
                .isThrownBy(() -> database.write(sql -> sql.change("DELETE FROM line")))
                .withMessageContaining("FOREIGN KEY constraint failed");
        assertThat(journal.everything(REEF)).containsExactly(line);
    }

    @Test
    void whoeverComesAfterTheFileWasClosedIsRefused() {
        Database closed = Database.open(folder.resolve("other.db"));
        closed.close();
        closed.close();
        Journal late = new SqlJournal(closed, new TestClock());
        assertThatIllegalStateException()
                .isThrownBy(() -> late.write(REEF, draft()))
                .withMessageContaining("is closed");
        assertThatIllegalStateException().isThrownBy(() -> late.everything(REEF));
    }
}
