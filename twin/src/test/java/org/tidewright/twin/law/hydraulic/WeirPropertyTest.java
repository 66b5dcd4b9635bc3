package org.tidewright.twin.law.hydraulic;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.tidewright.testkit.Draw;
import org.tidewright.testkit.SeededCases;

class WeirPropertyTest {
    @Test
    void flowRisesWithHead() {
        SeededCases.check(draw -> {
            Weir weir = weir(draw);
            double head = draw.between(1e-6, 0.5);
            assertThat(weir.flow(head * draw.between(1.0001, 10))).isGreaterThan(weir.flow(head));
        });
    }

    @Test
    void headGivesBackTheFlow() {
        SeededCases.check(draw -> {
            Weir weir = weir(draw);
            double head = draw.between(1e-5, 0.5);
            assertThat(weir.head(weir.flow(head))).isCloseTo(head, within(1e-9 * head + 1e-15));
        });
    }

    @Test
    void aCombPassesNoJumpAtTheTopOfItsTeeth() {
        SeededCases.check(draw -> {
            CombWeir comb = comb(draw);
            double below = comb.flow(comb.slotDepth() * (1 - 1e-9));
            double above = comb.flow(comb.slotDepth() * (1 + 1e-9));
            assertThat(above).isCloseTo(below, within(1e-7 * below));
        });
    }

    @Test
    void blockedSlotsNeedMoreHeadForTheSameFlow() {
        SeededCases.check(draw -> {
            CombWeir comb = comb(draw);
            double head = draw.between(0.002, 0.1);
            assertThat(comb.blocked(draw.between(0.01, 0.9)).head(comb.flow(head)))
                    .isGreaterThan(head);
        });
    }

    @Test
    void aDrownedWeirPassesLessTheHigherTheLowerWater() {
        SeededCases.check(draw -> {
            Weir weir = weir(draw);
            double upper = draw.between(1e-3, 0.3);
            double ratio = draw.between(0.001, 0.99);
            double drowned = DrownedWeir.flow(weir, upper, ratio * upper);
            assertThat(drowned).isBetween(0.0, weir.flow(upper));
            assertThat(DrownedWeir.flow(weir, upper, 1.005 * ratio * upper)).isLessThan(drowned);
            assertThat(DrownedWeir.flow(weir, ratio * upper, upper)).isEqualTo(-drowned);
        });
    }

    private static Weir weir(Draw draw) {
        double length = draw.between(0.05, 2);
        return switch (draw.whole(0, 2)) {
            case 0 -> new FrancisWeir(length, draw.whole(0, 2));
            case 1 -> new RehbockWeir(length, draw.between(0.1, 1));
            default -> comb(draw);
        };
    }

    private static CombWeir comb(Draw draw) {
        return new CombWeir(
                draw.whole(3, 80),
                draw.between(0.002, 0.012),
                draw.between(0.01, 0.06),
                draw.between(0.50, 0.64),
                draw.between(0, 1));
    }
}
