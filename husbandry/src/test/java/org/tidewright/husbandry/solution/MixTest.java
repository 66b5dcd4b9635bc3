package org.tidewright.husbandry.solution;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.tidewright.plan.model.Salt;

class MixTest {
    /** What it is called for is what it brings, as strong as it was asked for, and no bottle of it falls out. */
    @ParameterizedTest
    @EnumSource
    void aMixHoldsWhatItsStrengthSays(Mix mix) {
        List<Solution> bottles = mix.bottles(mix.usual(), 0.02, 20);
        assertThat(bottles).hasSize(mix.isPair() ? 2 : 1);
        if (mix != Mix.LIMEWATER) {
            assertThat(bottles.get(0).total(mix.supply()::of)).isCloseTo(mix.usual(), within(1e-9 * mix.usual()));
        }
        assertThat(bottles).allSatisfy(bottle -> {
            assertThat(bottle.clashes()).isEmpty();
            assertThat(Solubility.shareOfSaturation(bottle, 20)).isLessThanOrEqualTo(1 + 1e-9);
        });
    }

    /** 80 g/L of bicarbonate are 0.9523 meq/mL, and 70.0 g/L of calcium chloride dihydrate match them. */
    @Test
    void thePairIsThatOfTheWorkedExample() {
        List<Solution> pair = Mix.BICARBONATE_PAIR.bottles(Mix.BICARBONATE_PAIR.strength(80), 0, 20);
        assertThat(pair.get(0).total(Salt::alkalinity)).isCloseTo(952.3, within(0.05));
        assertThat(pair.get(1).amount(Salt.CALCIUM_CHLORIDE) * 0.147014).isCloseTo(70.0, within(0.05));
    }

    /** NO3 62.005 of NaNO3 84.995 g/mol: 14 g/L hold 10.2 mg/mL; PO4 94.971 of NaH2PO4 119.977: 1.3 g/L hold 1.03. */
    @Test
    void nutrientsAreCountedAsTheTradeTellsThem() {
        assertThat(Supply.NITRATE.told(Mix.NITRATE.usual())).isCloseTo(10.2, within(0.05));
        assertThat(Supply.PHOSPHATE.told(Mix.PHOSPHATE.usual())).isCloseTo(1.03, within(0.005));
        assertThat(Supply.NITRATE.amount(Supply.NITRATE.told(3))).isCloseTo(3, within(1e-12));
    }

    @Test
    void refusesNoStrength() {
        assertThatThrownBy(() -> Mix.LYE.bottles(0, 0, 20)).hasMessageContaining("strength of the solution");
    }
}
