package org.tidewright.twin.law.hydraulic;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Scale;

class DrainPropertyTest {
    private static final double VISCOSITY = 0.93e-6;

    @Property
    void headOverAMouthGivesBackTheFlow(
            @ForAll @Scale(9) @DoubleRange(min = 0.01, max = 0.1) double bore,
            @ForAll @Scale(9) @DoubleRange(min = 1e-4, max = 0.5) double head) {
        DrainMouth mouth = new DrainMouth(bore);
        assertThat(mouth.head(mouth.flow(head))).isCloseTo(head, within(1e-12));
        assertThat(mouth.flow(1.01 * head)).isGreaterThan(mouth.flow(head));
    }

    @Property
    void aThrottledSiphonPassesTheFlowItWasThrottledTo(
            @ForAll @Scale(9) @DoubleRange(min = 0.015, max = 0.06) double bore,
            @ForAll @Scale(9) @DoubleRange(min = 0.2, max = 2) double drop,
            @ForAll @Scale(9) @DoubleRange(min = 0.05, max = 1) double share) {
        PipeRun drain = new PipeRun(bore, 1.5 * drop, PipeFriction.CLEAN_PLASTIC, 3);
        double wanted = share * FullSiphon.capacity(drain, drop, VISCOSITY);
        double loss = FullSiphon.throttlingLoss(drain, drop, wanted, VISCOSITY);
        assertThat(loss).isGreaterThan(-1e-8);
        assertThat(FullSiphon.capacity(drain.withExtraLoss(Math.max(0, loss)), drop, VISCOSITY))
                .isCloseTo(wanted, within(1e-9 * wanted));
    }

    @Property
    void theSelfVentingLimitIsWhereTheFroudeNumberSaysSo(
            @ForAll @Scale(9) @DoubleRange(min = 0.01, max = 0.1) double bore) {
        double limit = VentedDrain.selfVentingLimit(bore);
        assertThat(PipeFroude.at(0.999 * limit, bore)).isEqualTo(PipeFroude.SELF_VENTING);
        assertThat(PipeFroude.at(1.001 * limit, bore)).isEqualTo(PipeFroude.GULPING);
    }
}
