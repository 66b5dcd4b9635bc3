package org.tidewright.twin.law.nutrient;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import org.junit.jupiter.api.Test;
import org.tidewright.twin.law.gas.Bubbles;

class SkimmingTest {
    /**
     * Feldman 2009 and 2010: total organic carbon of tank water falls exponentially and levels off when 20 to 35 % are
     * gone.
     */
    @Test
    void organicsFallToAPlateau() {
        double volume = 0.100;
        double flow = 0.010 / 60;
        double total = 0.2; // mol/m^3, 2.4 mg/L
        double skimmable = Skimming.SKIMMABLE.usual() * total;
        double rest = total - skimmable;
        double step = 10;
        for (int i = 0; i < 3600; i++) {
            double first = Skimming.removed(flow, 0.3, skimmable) / volume;
            skimmable -= step * Skimming.removed(flow, 0.3, skimmable - step / 2 * first) / volume;
        }
        double expected = Skimming.SKIMMABLE.usual() * total * Math.exp(-flow * 0.3 / volume * 36_000);
        assertThat(skimmable).isCloseTo(expected, withinPercentage(0.01));
        assertThat(1 - (rest + skimmable) / total).isBetween(0.20, 0.35);
    }

    /** By hand: 0.6 m^3/h of air give 0.6 * 279 * 0.06 * 0.4 = 4.018 g/h; times 0.95 / 9.09 * 1.024^5: 0.4727 m^3/h. */
    @Test
    void airOfTheColumnExchangesAsAStoneAtThatDepth() {
        double air = 0.600 / 3600;
        double conductance = Skimming.oxygenConductance(air, 0.4, Bubbles.FINE, Bubbles.ALPHA, 25);
        assertThat(conductance * 3600).isCloseTo(0.4727, within(5e-5));
        assertThat(Skimming.oxygenConductance(0, 0.4, Bubbles.FINE, Bubbles.ALPHA, 25))
                .isZero();
    }

    /** 0.3 % of 200 L a day is 0.6 L, inside what keepers empty. */
    @Test
    void aCupFillsInDays() {
        assertThat(Skimming.skimmate(0.200, Skimming.WETNESS.usual()) * 86_400).isCloseTo(0.6e-3, within(1e-12));
        assertThat(Skimming.removed(1e-4, 0.3, 0)).isZero();
    }
}
