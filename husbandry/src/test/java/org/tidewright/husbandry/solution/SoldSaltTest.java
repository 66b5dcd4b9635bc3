package org.tidewright.husbandry.solution;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.tidewright.plan.model.Salt;
import org.tidewright.testkit.SeededCases;

class SoldSaltTest {
    /** 110.98/147.01 = 0.7549: a dihydrate of 72 to 78 % of CaCl2 is 95.4 to 103.3 % of its formula. */
    @Test
    void dihydrateByItsDryShareCanBeMoreThanItsFormula() {
        assertThat(SoldSalt.ofDryShare(Salt.CALCIUM_CHLORIDE, 0.72, 0).purity()).isCloseTo(0.954, within(0.0005));
        assertThat(SoldSalt.ofDryShare(Salt.CALCIUM_CHLORIDE, 0.78, 0).purity()).isCloseTo(1.033, within(0.0005));
        assertThat(SoldSalt.ofDryShare(Salt.CALCIUM_CHLORIDE, 0.7549, 0).purity())
                .isCloseTo(1, within(1e-4));
        assertThat(SoldSalt.ofDryShare(Salt.SODIUM_CARBONATE, 0.98, 0.01))
                .isEqualTo(new SoldSalt(Salt.SODIUM_CARBONATE, 0.98, 0.01));
    }

    /** 72 to 78 % as the middle nine tenths: 0.75 ± 1.645 0.018 is 0.720 to 0.780. */
    @Test
    void usualDihydrateCoversWhatIsSold() {
        SoldSalt usual = SoldSalt.usual(Salt.CALCIUM_CHLORIDE);
        double dry = usual.purity() * 110.98 / 147.01;
        double doubt = 1.645 * usual.standardError() * 110.98 / 147.01;
        assertThat(dry - doubt).isCloseTo(0.72, within(0.001));
        assertThat(dry + doubt).isCloseTo(0.78, within(0.001));
    }

    /** 100 g at 95 % hold 95 g of Ca(OH)2, 74.093 g/mol: 1.2822 mol. */
    @Test
    void impureSaltIsWeighedHeavier() {
        SoldSalt lime = new SoldSalt(Salt.CALCIUM_HYDROXIDE, 0.95, 0.02);
        assertThat(lime.amountIn(0.1)).isCloseTo(1.2822, within(5e-5));
        assertThat(lime.massHolding(1.2822)).isCloseTo(0.1, within(1e-5));
    }

    @Test
    void massAndAmountGiveEachOtherBack() {
        SeededCases.check(draw -> {
            SoldSalt sold = new SoldSalt(draw.oneOf(Salt.values()), draw.between(0.3, 2.1), draw.between(0, 0.5));
            double mass = draw.between(0, 10);
            assertThat(sold.massHolding(sold.amountIn(mass))).isCloseTo(mass, within(1e-14 * mass));
        });
    }

    @ParameterizedTest
    @EnumSource(Salt.class)
    void everySaltHasAUsualPurityAndWords(Salt salt) {
        assertThat(SoldSalt.usual(salt).salt()).isEqualTo(salt);
        assertThat(SoldSalt.usual(salt).purity()).isBetween(0.9, 1.05);
        assertThat(SoldSalt.usual(salt).standardError()).isBetween(0.004, 0.03);
        assertThat(SoldSalt.usual(salt).words()).matches("[a-z ()]+");
    }

    @Test
    void refusesAPurityInPerCent() {
        assertThatThrownBy(() -> new SoldSalt(Salt.CALCIUM_CHLORIDE, 77, 0)).hasMessageContaining("is it in percent?");
        assertThatThrownBy(() -> new SoldSalt(Salt.CALCIUM_CHLORIDE, 0.98, 2))
                .hasMessageContaining("is it in percent?");
    }
}
