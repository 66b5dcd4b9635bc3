package org.tidewright.twin.rehearsal;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.tidewright.plan.source.Basis;
import org.tidewright.twin.TestVessel;
import org.tidewright.twin.contract.Parameter;
import org.tidewright.twin.ensemble.Ensemble;
import org.tidewright.twin.run.Network;

/** Outcomes made by hand of four numbers, of which one does nothing. */
class InfluenceTest {
    private final Network network = network();
    private final List<double[]> draws = new Ensemble(network.parameters(), 200, 1).map(values -> values);

    private static Network network() {
        Network.Builder builder = new TestVessel(1, 1).builder();
        for (String name : List.of("idle", "weak", "strong", "of the other outcome")) {
            builder.parameter(name, "1", 1, 0.5, 2, Basis.FROM_MEMORY, "the test");
        }
        return builder.build();
    }

    @Test
    void whatMovesAnOutcomeIsToldTheStrongestFirstAndTheIdleNotAtAll() {
        double[] outcome = draws.stream()
                .mapToDouble(of -> 3 / of[2] + 2 * Math.log(of[1]))
                .toArray();
        double[] other = draws.stream().mapToDouble(of -> of[3]).toArray();
        assertThat(Influence.of(network.parameters(), draws, List.of(outcome, other)))
                .extracting(Parameter::name)
                .containsExactly("of the other outcome", "strong", "weak");
    }

    @Test
    void whatNothingMovesHasNothingToldOfIt() {
        assertThat(Influence.of(network.parameters(), draws, List.of(new double[200])))
                .isEmpty();
    }
}
