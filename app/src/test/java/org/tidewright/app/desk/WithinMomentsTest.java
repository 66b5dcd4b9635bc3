package org.tidewright.app.desk;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.time.Duration;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import org.junit.jupiter.api.Test;
import org.tidewright.husbandry.burden.Burden;
import org.tidewright.husbandry.livestock.Animals;
import org.tidewright.plan.species.Catalogue;

class WithinMomentsTest {
    private static final Animals GRAMMA =
            new Animals(Catalogue.ofProgram().find("Gramma loreto").orElseThrow(), 1, 0.04);

    @Test
    void whatIsNotReadyInTimeIsLateAndNotSaid() {
        CompletableFuture<Optional<Burden>> never = new CompletableFuture<>();
        WithinMoments water = new WithinMoments((candidate, coming) -> never, Duration.ofMillis(1));
        assertThat(water.with(GRAMMA, List.of())).isEmpty();
        assertThat(water.isLate()).isTrue();
    }

    @Test
    void whatIsReadyIsNotLateEvenWhenNoTimeIsLeft() {
        CompletableFuture<Optional<Burden>> ready = CompletableFuture.completedFuture(Optional.empty());
        WithinMoments water = new WithinMoments((candidate, coming) -> ready, Duration.ZERO);
        assertThat(water.with(GRAMMA, List.of())).isEmpty();
        assertThat(water.isLate()).isFalse();
    }

    @Test
    void aTwinThatFailsIsNotTakenForOneThatIsLate() {
        CompletableFuture<Optional<Burden>> failed =
                CompletableFuture.failedFuture(new IllegalStateException("no state"));
        WithinMoments water = new WithinMoments((candidate, coming) -> failed, Duration.ofSeconds(1));
        assertThatThrownBy(() -> water.with(GRAMMA, List.of()))
                .isInstanceOf(IllegalStateException.class)
                .hasMessageContaining("royal gramma");
    }
}
