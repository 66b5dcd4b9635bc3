package org.tidewright.twin.law.hydraulic;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.tidewright.testkit.SeededCases;

class DrainPropertyTest {
    private static final double VISCOSITY = 0.93e-6;

    @Test
    void headOverAMouthGivesBackTheFlow() {
        SeededCases.check(draw -> {
            DrainMouth mouth = new DrainMouth(draw.between(0.01, 0.1));
            double head = draw.between(1e-4, 0.5);
            assertThat(mouth.head(mouth.flow(head))).isCloseTo(head, within(1e-12));
            assertThat(mouth.flow(1.01 * head)).isGreaterThan(mouth.flow(head));
        });
    }

    @Test
    void aThrottledSiphonPassesTheFlowItWasThrottledTo() {
        SeededCases.check(draw -> {
            double drop = draw.between(0.2, 2);
            PipeRun drain = new PipeRun(draw.between(0.015, 0.06), 1.5 * drop, PipeFriction.CLEAN_PLASTIC, 3);
            double wanted = draw.between(0.05, 1) * FullSiphon.capacity(drain, drop, VISCOSITY);
            double loss = FullSiphon.throttlingLoss(drain, drop, wanted, VISCOSITY);
            assertThat(loss).isGreaterThan(-1e-8);
            assertThat(FullSiphon.capacity(drain.withExtraLoss(Math.max(0, loss)), drop, VISCOSITY))
                    .isCloseTo(wanted, within(1e-9 * wanted));
        });
    }

    @Test
    void theSelfVentingLimitIsWhereTheFroudeNumberSaysSo() {
        SeededCases.check(draw -> {
            double bore = draw.between(0.01, 0.1);
            double limit = VentedDrain.selfVentingLimit(bore);
            assertThat(PipeFroude.at(0.999 * limit, bore)).isEqualTo(PipeFroude.SELF_VENTING);
            assertThat(PipeFroude.at(1.001 * limit, bore)).isEqualTo(PipeFroude.GULPING);
        });
    }
}
