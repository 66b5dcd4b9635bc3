package org.tidewright.twin.law.hydraulic;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Scale;

class PipeRunPropertyTest {
    @Property(tries = 5000)
    void headLossOfTheFlowIsTheHeadThatDrivesIt(
            @ForAll("runs") PipeRun run,
            @ForAll @Scale(9) @DoubleRange(min = -9, max = 1) double logHead,
            @ForAll @Scale(9) @DoubleRange(min = 0.8e-6, max = 1.8e-6) double viscosity) {
        double head = Math.pow(10, logHead);
        double flow = run.flow(head, viscosity);
        assertThat(run.headLoss(flow, viscosity)).isCloseTo(head, within(1e-10 * head));
    }

    @Property
    void flowRisesWithHead(
            @ForAll("runs") PipeRun run,
            @ForAll @Scale(9) @DoubleRange(min = -6, max = 1) double logHead,
            @ForAll @Scale(9) @DoubleRange(min = 1.001, max = 10) double ratio) {
        double head = Math.pow(10, logHead);
        assertThat(run.flow(ratio * head, 1e-6)).isGreaterThan(run.flow(head, 1e-6));
    }

    @Property
    void backwardIsTheMirrorOfForward(
            @ForAll("runs") PipeRun run, @ForAll @Scale(9) @DoubleRange(min = 1e-4, max = 5) double head) {
        assertThat(run.flow(-head, 1e-6)).isEqualTo(-run.flow(head, 1e-6));
        assertThat(run.headLoss(-1e-4, 1e-6)).isEqualTo(-run.headLoss(1e-4, 1e-6));
    }

    @Provide
    Arbitrary<PipeRun> runs() {
        return Combinators.combine(
                        Arbitraries.doubles().between(0.004, 0.060).ofScale(9),
                        Arbitraries.doubles().between(0.05, 20).ofScale(9),
                        Arbitraries.doubles().between(0, 300e-6).ofScale(9),
                        Arbitraries.doubles().between(0, 1000).ofScale(9),
                        Arbitraries.doubles().between(1, 3).ofScale(9))
                .as(PipeRun::new);
    }
}
