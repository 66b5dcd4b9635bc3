package org.tidewright.twin.law.nutrient;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.tidewright.testkit.SeededCases;

class RemineralisationTest {
    private static final double DAY = 86_400;

    /** Anderson 1995, Deep-Sea Res. I 42, 1675: C106 H175 O42 N16 P takes 150 O2, of which 32 oxidise its ammonia. */
    @Test
    void planktonTakesTheOxygenPublished() {
        double toAmmonia = Remineralisation.oxygenPerCarbon(175 / 106.0, 42 / 106.0, 16 / 106.0, 1 / 106.0);
        assertThat(toAmmonia * 106).isCloseTo(118, within(1e-9));
        assertThat(toAmmonia * 106 + 2 * 16).isCloseTo(150, within(1e-9));
        assertThat(toAmmonia).isCloseTo(Remineralisation.OXYGEN_PER_CARBON, within(1e-12));
    }

    /** Carbohydrate CH2O takes one oxygen, ethanol C2H6O three, acetic acid two, cells C5H7O2N five. */
    @Test
    void plainCompoundsTakeWhatTheirEquationsSay() {
        assertThat(Remineralisation.oxygenPerCarbon(2, 1, 0, 0)).isEqualTo(1);
        assertThat(Remineralisation.oxygenPerCarbon(3, 0.5, 0, 0)).isEqualTo(CarbonDosing.OXYGEN_OF_ETHANOL);
        assertThat(Remineralisation.oxygenPerCarbon(2, 1, 0, 0)).isEqualTo(CarbonDosing.OXYGEN_OF_ACETATE);
        assertThat(Remineralisation.oxygenPerCarbon(1.4, 0.4, 0.2, 0))
                .isCloseTo(CarbonDosing.OXYGEN_OF_CELLS, within(1e-12));
    }

    /** Meyer and Schultz 1985, Limnol. Oceanogr. 30, 146: faeces of grunts lost over half their phosphorus in a day. */
    @Test
    void phosphorusOfFaecesCanHalveInADay() {
        double fastest = Remineralisation.LABILE.usual() * Remineralisation.PHOSPHORUS_FACTOR.high();
        assertThat(Math.exp(-fastest * DAY)).isCloseTo(0.5, within(0.01));
    }

    @Test
    void aRateDoublesInTenDegrees() {
        double rate = Remineralisation.LABILE.usual();
        assertThat(Remineralisation.rate(rate, 25)).isEqualTo(rate);
        assertThat(Remineralisation.rate(rate, 30) / Remineralisation.rate(rate, 20))
                .isCloseTo(2, within(1e-12));
    }

    @Test
    void breakdownSlowsWithoutOxygenAndBurnsNoMoreThanThereIs() {
        SeededCases.check(draw -> {
            double oxygen = draw.between(0, 0.4);
            double share = Remineralisation.share(oxygen, 0.01, 0.3);
            assertThat(share).isBetween(0.3, 1.0);
            assertThat(Remineralisation.share(oxygen + 0.01, 0.01, 0.3)).isGreaterThan(share);
            assertThat(Remineralisation.aerobicShare(oxygen, 0.01)).isLessThanOrEqualTo(share);
        });
        assertThat(Remineralisation.aerobicShare(0, 0.01)).isZero();
    }
}
