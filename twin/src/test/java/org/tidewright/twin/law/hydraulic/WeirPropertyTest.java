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

class WeirPropertyTest {
    @Property
    void flowRisesWithHead(
            @ForAll("weirs") Weir weir,
            @ForAll @Scale(9) @DoubleRange(min = 1e-6, max = 0.5) double head,
            @ForAll @Scale(9) @DoubleRange(min = 1.0001, max = 10) double ratio) {
        assertThat(weir.flow(head * ratio)).isGreaterThan(weir.flow(head));
    }

    @Property
    void headGivesBackTheFlow(
            @ForAll("weirs") Weir weir, @ForAll @Scale(9) @DoubleRange(min = 1e-5, max = 0.5) double head) {
        assertThat(weir.head(weir.flow(head))).isCloseTo(head, within(1e-9 * head + 1e-15));
    }

    @Property
    void aCombPassesNoJumpAtTheTopOfItsTeeth(@ForAll("combs") CombWeir comb) {
        double below = comb.flow(comb.slotDepth() * (1 - 1e-9));
        double above = comb.flow(comb.slotDepth() * (1 + 1e-9));
        assertThat(above).isCloseTo(below, within(1e-7 * below));
    }

    @Property
    void blockedSlotsNeedMoreHeadForTheSameFlow(
            @ForAll("combs") CombWeir comb,
            @ForAll @Scale(9) @DoubleRange(min = 0.01, max = 0.9) double share,
            @ForAll @Scale(9) @DoubleRange(min = 0.002, max = 0.1) double head) {
        assertThat(comb.blocked(share).head(comb.flow(head))).isGreaterThan(head);
    }

    @Property
    void aDrownedWeirPassesLessTheHigherTheLowerWater(
            @ForAll("weirs") Weir weir,
            @ForAll @Scale(9) @DoubleRange(min = 1e-3, max = 0.3) double upper,
            @ForAll @Scale(9) @DoubleRange(min = 0.001, max = 0.99) double ratio) {
        double drowned = DrownedWeir.flow(weir, upper, ratio * upper);
        assertThat(drowned).isBetween(0.0, weir.flow(upper));
        assertThat(DrownedWeir.flow(weir, upper, 1.005 * ratio * upper)).isLessThan(drowned);
        assertThat(DrownedWeir.flow(weir, ratio * upper, upper)).isEqualTo(-drowned);
    }

    @Provide
    Arbitrary<Weir> weirs() {
        Arbitrary<Double> length = Arbitraries.doubles().between(0.05, 2).ofScale(9);
        Arbitrary<Weir> francis = Combinators.combine(
                        length, Arbitraries.integers().between(0, 2))
                .as((b, n) -> new FrancisWeir(b, n));
        Arbitrary<Weir> rehbock = Combinators.combine(
                        length, Arbitraries.doubles().between(0.1, 1).ofScale(9))
                .as((b, p) -> new RehbockWeir(b, p));
        return Arbitraries.oneOf(francis, rehbock, combs().map(comb -> comb));
    }

    @Provide
    Arbitrary<CombWeir> combs() {
        return Combinators.combine(
                        Arbitraries.integers().between(3, 80),
                        Arbitraries.doubles().between(0.002, 0.012).ofScale(9),
                        Arbitraries.doubles().between(0.01, 0.06).ofScale(9),
                        Arbitraries.doubles().between(0.50, 0.64).ofScale(9),
                        Arbitraries.doubles().between(0, 1).ofScale(9))
                .as(CombWeir::new);
    }
}
