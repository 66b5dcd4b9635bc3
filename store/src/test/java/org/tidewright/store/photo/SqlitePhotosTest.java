package org.tidewright.store.photo;

import java.nio.file.Path;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.io.TempDir;
import org.tidewright.husbandry.journal.Photos;
import org.tidewright.store.Store;
import org.tidewright.store.TestClock;

class SqlitePhotosTest extends PhotosContract {
    @TempDir
    private Path folder;

    private @Nullable Store store;

    @Override
    Photos openEmpty() {
        Store opened = Store.open(folder.resolve("photos.db"), new TestClock());
        store = opened;
        return opened.photos();
    }

    @AfterEach
    void close() {
        if (store != null) {
            store.close();
        }
    }
}
