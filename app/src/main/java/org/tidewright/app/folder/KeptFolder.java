package org.tidewright.app.folder;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CompletionException;
import org.tidewright.app.plans.PlanFolder;
import org.tidewright.husbandry.exchange.KeptSystem;
import org.tidewright.husbandry.journal.BothLogs;
import org.tidewright.husbandry.journal.Journal;
import org.tidewright.husbandry.journal.Photos;
import org.tidewright.husbandry.journal.ProbeLog;
import org.tidewright.store.Store;

/**
 * A folder that is in use. The database is opened beside the start of the program: who asks for it first waits until it is
 * open.
 */
public final class KeptFolder implements AutoCloseable {
    /** The file in which the journal of all systems is kept. */
    public static final String DATABASE = "tidewright.sqlite";

    private final PlanFolder plans;
    private final CompletableFuture<Store> store;

    /** Opens a folder; makes it where there is none. */
    public KeptFolder(Path root, Clock clock) {
        plans = new PlanFolder(root);
        store = CompletableFuture.supplyAsync(() -> {
            try {
                return Store.open(Files.createDirectories(root).resolve(DATABASE), clock);
            } catch (IOException unwritable) {
                throw new UncheckedIOException("the folder " + root + " cannot be made", unwritable);
            }
        });
    }

    public PlanFolder plans() {
        return plans;
    }

    /** The journal of all systems, once it is open. */
    public Journal journal() {
        return store().journal();
    }

    /** What probes said of all systems. */
    public ProbeLog probes() {
        return store().probes();
    }

    /** Journal and probes at once. */
    public BothLogs bothLogs() {
        return store().both();
    }

    /** The pictures of all systems. */
    public Photos photos() {
        return store().photos();
    }

    /** Everything that was written of a system. */
    public KeptSystem system(String id) {
        return new KeptSystem(id, store().journal(), store().probes(), store().photos());
    }

    private Store store() {
        try {
            return store.join();
        } catch (CompletionException failed) {
            if (failed.getCause() instanceof RuntimeException cause) {
                throw cause;
            }
            throw failed;
        }
    }

    @Override
    public void close() {
        if (!store.isCompletedExceptionally()) {
            store().close();
        }
    }
}
