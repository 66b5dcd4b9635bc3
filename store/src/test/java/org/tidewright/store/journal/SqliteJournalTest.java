package org.tidewright.store.journal;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.io.TempDir;
import org.tidewright.husbandry.journal.Journal;
import org.tidewright.store.Store;
import org.tidewright.store.TestClock;

class SqliteJournalTest {
    @TempDir
    private Path folder;

    private final List<Store> stores = new ArrayList<>();

    private Journal inAFile(String name) {
        Store store = Store.open(folder.resolve(name + ".db"), new TestClock());
        stores.add(store);
        return store.journal();
    }

    @AfterEach
    void nothingIsWrongWithTheFiles() {
        for (Store store : stores) {
            assertThat(store.faults()).isEmpty();
            store.close();
        }
    }

    @Nested
    class SingleLines extends JournalContract {
        @Override
        Journal openEmpty(String name) {
            return inAFile(name);
        }
    }

    @Nested
    class ManyLines extends ManyLinesContract {
        @Override
        Journal openEmpty(String name) {
            return inAFile(name);
        }
    }

    @Nested
    class Restored extends RestoringContract {
        @Override
        Journal openEmpty(String name) {
            return inAFile(name);
        }
    }
}
