package org.tidewright.twin.law.hydraulic;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.tidewright.testkit.Draw;
import org.tidewright.testkit.SeededCases;

class PipeRunPropertyTest {
    @Test
    void headLossOfTheFlowIsTheHeadThatDrivesIt() {
        SeededCases.check(5000, draw -> {
            PipeRun run = run(draw);
            double head = Math.pow(10, draw.between(-9, 1));
            double viscosity = draw.between(0.8e-6, 1.8e-6);
            double flow = run.flow(head, viscosity);
            assertThat(run.headLoss(flow, viscosity)).isCloseTo(head, within(1e-10 * head));
        });
    }

    @Test
    void flowRisesWithHead() {
        SeededCases.check(draw -> {
            PipeRun run = run(draw);
            double head = Math.pow(10, draw.between(-6, 1));
            assertThat(run.flow(draw.between(1.001, 10) * head, 1e-6)).isGreaterThan(run.flow(head, 1e-6));
        });
    }

    @Test
    void backwardIsTheMirrorOfForward() {
        SeededCases.check(draw -> {
            PipeRun run = run(draw);
            double head = draw.between(1e-4, 5);
            assertThat(run.flow(-head, 1e-6)).isEqualTo(-run.flow(head, 1e-6));
            assertThat(run.headLoss(-1e-4, 1e-6)).isEqualTo(-run.headLoss(1e-4, 1e-6));
        });
    }

    private static PipeRun run(Draw draw) {
        return new PipeRun(
                draw.between(0.004, 0.060),
                draw.between(0.05, 20),
                draw.between(0, 300e-6),
                draw.between(0, 1000),
                draw.between(1, 3));
    }
}
