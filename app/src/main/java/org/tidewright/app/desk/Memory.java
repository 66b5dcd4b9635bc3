package org.tidewright.app.desk;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.concurrent.CompletableFuture;
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
        CompletableFuture<V> mine = new CompletableFuture<>();
        CompletableFuture<V> standing;
        synchronized (answers) {
            standing = answers.putIfAbsent(question, mine);
        }
        if (standing != null) {
            return standing.join();
        }
        try {
            mine.complete(answer.apply(question));
        } catch (RuntimeException failed) {
            synchronized (answers) {
                answers.remove(question, mine);
            }
            mine.completeExceptionally(failed);
            throw failed;
        }
        return mine.join();
    }
}
