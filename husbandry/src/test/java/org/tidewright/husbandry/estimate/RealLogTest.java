package org.tidewright.husbandry.estimate;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;

/** Each next reading of logs that others kept, foretold from those before it; nothing was tuned on them. */
class RealLogTest {
    static Tally eelgrass(String quantity) {
        List<RealLogs.Log> logs = RealLogs.eelgrassTanks().stream()
                .filter(log -> log.name().toLowerCase(Locale.ROOT).startsWith(quantity + " "))
                .toList();
        assertThat(logs).hasSize(8);
        return OneAhead.of(logs, 6, 200);
    }

    static Tally office() {
        return OneAhead.of(RealLogs.office(), 20, 120);
    }

    static Tally jellyfish(String quantity) {
        return OneAhead.of(
                RealLogs.jellyfish().stream()
                        .filter(log -> log.name().startsWith(quantity))
                        .toList(),
                4,
                200);
    }

    @Test
    void foretellsTanksTestedByHandBetterThanTheLastReading() {
        for (String quantity : List.of("temperature", "ph", "oxygen")) {
            Tally tally = eelgrass(quantity);
            assertThat(tally.count()).isGreaterThan(350);
            assertThat(tally.rootMeanSquare(0)).as(quantity).isLessThan(0.95 * tally.rootMeanSquare(1));
            assertThat(tally.rootMeanSquare(0)).as(quantity).isLessThan(0.85 * tally.rootMeanSquare(2));
            assertThat(tally.coverage()).as(quantity).isBetween(0.84, 0.95);
        }
    }

    @Test
    void foretellsARoomWithFaultsBetterThanTheLastReading() {
        Tally tally = office();
        assertThat(tally.count()).isGreaterThan(1000);
        assertThat(tally.rootMeanSquare(0)).isLessThan(0.9 * tally.rootMeanSquare(1));
        assertThat(tally.coverage()).isBetween(0.8, 0.95);
    }
}
