package org.tidewright.app.desk;

import java.time.Duration;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import java.util.function.BiFunction;
import org.tidewright.husbandry.burden.Burden;
import org.tidewright.husbandry.livestock.Animals;
import org.tidewright.web.desk.WaterSoon;

/** Waits for the twin as long as a page may take, for all that one page asks together. */
final class WithinMoments implements WaterSoon {
    private static final Duration MOMENTS = Duration.ofSeconds(3);

    private final BiFunction<Animals, List<Animals>, CompletableFuture<Optional<Burden>>> begun;
    private final long end;
    private boolean late;

    WithinMoments(BiFunction<Animals, List<Animals>, CompletableFuture<Optional<Burden>>> begun) {
        this(begun, MOMENTS);
    }

    WithinMoments(BiFunction<Animals, List<Animals>, CompletableFuture<Optional<Burden>>> begun, Duration patience) {
        this.begun = begun;
        end = System.nanoTime() + patience.toNanos();
    }

    @Override
    public Optional<Burden> with(Animals candidate, List<Animals> coming) {
        CompletableFuture<Optional<Burden>> answer = begun.apply(candidate, coming);
        try {
            return answer.get(Math.max(0, end - System.nanoTime()), TimeUnit.NANOSECONDS);
        } catch (TimeoutException still) {
            late = true;
            return Optional.empty();
        } catch (InterruptedException stopped) {
            Thread.currentThread().interrupt();
            late = true;
            return Optional.empty();
        } catch (ExecutionException failed) {
            throw new IllegalStateException("the twin could not run with " + candidate.words(), failed.getCause());
        }
    }

    @Override
    public boolean isLate() {
        return late;
    }
}
