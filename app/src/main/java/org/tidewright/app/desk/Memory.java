package org.tidewright.app.desk;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CompletionException;
import java.util.concurrent.Executor;
import java.util.concurrent.ForkJoinPool;
import java.util.function.Function;

/**
 * Remembers the most recently used answers; two who ask the same at once wait for one computation.
 *
 * @param <K> question, compared by {@code equals}
 * @param <V> answer
 */
final class Memory<K, V> {
    private final Map<K, CompletableFuture<V>> answers;

    Memory(int most) {
        answers = new LinkedHashMap<>(16, 0.75f, true) {
            private static final long serialVersionUID = 1L;

            @Override
            protected boolean removeEldestEntry(Map.Entry<K, CompletableFuture<V>> eldest) {
                return size() > most;
            }
        };
    }

    V get(K question, Function<K, V> answer) {
        try {
            return standing(question, answer, Runnable::run).join();
        } catch (CompletionException failed) {
            if (failed.getCause() instanceof RuntimeException cause) {
                throw cause;
            }
            throw failed;
        }
    }

    /** The answer once it is there; worked out behind the one who asks. */
    CompletableFuture<V> begin(K question, Function<K, V> answer) {
        return standing(question, answer, ForkJoinPool.commonPool());
    }

    private CompletableFuture<V> standing(K question, Function<K, V> answer, Executor worker) {
        CompletableFuture<V> mine = new CompletableFuture<>();
        synchronized (answers) {
            CompletableFuture<V> standing = answers.putIfAbsent(question, mine);
            if (standing != null) {
                return standing;
            }
        }
        worker.execute(() -> complete(mine, question, answer));
        return mine;
    }

    /** What failed is forgotten, so that it can be asked again. */
    private void complete(CompletableFuture<V> mine, K question, Function<K, V> answer) {
        try {
            mine.complete(answer.apply(question));
        } catch (RuntimeException | Error failed) {
            synchronized (answers) {
                answers.remove(question, mine);
            }
            mine.completeExceptionally(failed);
        }
    }
}
