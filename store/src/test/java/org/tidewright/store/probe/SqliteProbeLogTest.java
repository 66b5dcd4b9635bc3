package org.tidewright.store.probe;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.io.TempDir;
import org.tidewright.husbandry.journal.ProbeLog;
import org.tidewright.store.Store;
import org.tidewright.store.TestClock;

class SqliteProbeLogTest extends ProbeLogContract {
    @TempDir
    private Path folder;

    private final List<Store> stores = new ArrayList<>();

    @Override
    ProbeLog openEmpty(String name) {
        Store store = Store.open(folder.resolve(name + ".db"), new TestClock());
        stores.add(store);
        return store.probes();
    }

    @AfterEach
    void nothingIsWrongWithTheFiles() {
        for (Store store : stores) {
            assertThat(store.faults()).isEmpty();
            store.close();
        }
    }
}
