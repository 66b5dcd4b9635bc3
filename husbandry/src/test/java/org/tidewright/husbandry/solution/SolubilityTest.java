package org.tidewright.husbandry.solution;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.tidewright.plan.model.Salt;
import org.tidewright.testkit.Close;
import org.tidewright.testkit.Draw;
import org.tidewright.testkit.ReferenceTable;
import org.tidewright.testkit.SeededCases;
import org.tidewright.twin.law.carbonate.Limewater;

class SolubilityTest {
    private static final Salt[] SOLIDS = {
        Salt.SODIUM_BICARBONATE,
        Salt.SODIUM_CARBONATE,
        Salt.SODIUM_HYDROXIDE,
        Salt.CALCIUM_CHLORIDE,
        Salt.MAGNESIUM_CHLORIDE,
        Salt.MAGNESIUM_SULFATE,
        Salt.POTASSIUM_CHLORIDE,
        Salt.AMMONIUM_CHLORIDE,
        Salt.SODIUM_NITRATE
    };

    @Test
    void otherHandbooksAgreeWithinWhatTheirRowsSay() {
        for (ReferenceTable.Row row : ReferenceTable.read(
                        SolubilityTest.class, "/reference/solution/solubility_other_handbooks.csv")
                .rows()) {
            double grams = 100 * Solubility.saturated(Salt.valueOf(row.text("salt")), row.number("temperature_c"));
            Close.relative(row, "grams_per_100_g_water", grams, row.number("tolerance"));
        }
    }

    /**
     * The same Polish table has 1.85, 1.65 and 1.41 g of Ca(OH)2 in a kilogram at 0, 20 and 40 degC, older and higher values;
     * only their ratios are compared, as the twin takes them from another handbook: 1.12 and 0.855 against 1.09 and 0.82.
     */
    @Test
    void limewaterFallsWithWarmthAboutAsInAnotherHandbook() {
        double at20 = Solubility.saturated(Salt.CALCIUM_HYDROXIDE, 20);
        assertThat(Solubility.saturated(Salt.CALCIUM_HYDROXIDE, 0) / at20).isCloseTo(1.85 / 1.65, within(0.05));
        assertThat(Solubility.saturated(Salt.CALCIUM_HYDROXIDE, 40) / at20).isCloseTo(1.41 / 1.65, within(0.05));
    }

    /** 9.32 % of the mass at 25 degC: 9.32/90.68 = 0.10278 g in a gram of water. */
    @Test
    void tableTemperaturesGiveTheTable() {
        assertThat(Solubility.saturated(Salt.SODIUM_BICARBONATE, 25)).isCloseTo(0.10278, within(5e-6));
        assertThat(Solubility.saturated(Salt.SODIUM_BICARBONATE, 0)).isCloseTo(6.48 / 93.52, within(1e-12));
        assertThat(Solubility.saturated(Salt.SODIUM_BICARBONATE, 40)).isCloseTo(11.13 / 88.87, within(1e-12));
    }

    @ParameterizedTest
    @EnumSource(Salt.class)
    void everySaltHasASolubility(Salt salt) {
        assertThat(Solubility.saturated(salt, 20)).isPositive();
    }

    @Test
    void solidsDissolveBetterInTheWarmthAndLimeInTheCold() {
        SeededCases.check(draw -> {
            double cold = draw.between(0, 39);
            double warm = draw.between(cold + 0.5, 40);
            Salt salt = draw.oneOf(SOLIDS);
            assertThat(Solubility.saturated(salt, warm)).isGreaterThan(Solubility.saturated(salt, cold));
            assertThat(Solubility.saturated(Salt.CALCIUM_HYDROXIDE, warm))
                    .isLessThan(Solubility.saturated(Salt.CALCIUM_HYDROXIDE, cold));
        });
    }

    /**
     * 80 g/L of bicarbonate, density 1.0557 (5 % has 1.0337, CRC): 7.58 % by mass, saturated at 10 degC with 7.59 %. 150 g/L of
     * carbonate, density 1.139 at 13 degC: 13.2 %, between 10.8 % at 10 and 17.9 % at 20 degC: ln of 0.1521/0.1211 over ln of
     * 0.2180/0.1211 is 0.388, 13.9 degC.
     */
    @Test
    void coldRoomsMakeCrystalsWhereTheHandbookSaysSo() {
        double bicarbonate = Solubility.clear(Solution.ofMass(Salt.SODIUM_BICARBONATE, 80))
                .orElseThrow()
                .coldest();
        double carbonate = Solubility.clear(Solution.ofMass(Salt.SODIUM_CARBONATE, 150))
                .orElseThrow()
                .coldest();
        assertThat(bicarbonate).isCloseTo(9.9, within(0.3));
        assertThat(carbonate).isCloseTo(13.9, within(0.3));
    }

    /** The CRC's 8.73 % at 20 degC and the density 1.0609: 92.6 g in a litre of solution, not the 96 of a kilogram of water. */
    @Test
    void aLitreOfSolutionHoldsLessThanAKilogramOfWater() {
        Solution most = Solubility.strongest(Solution.ofMass(Salt.SODIUM_BICARBONATE, 1), 20);
        assertThat(most.amount(Salt.SODIUM_BICARBONATE) * 0.084007).isCloseTo(92.6, within(0.2));
    }

    /** Together they are nearer to it than the sum of what each is alone: they leave each other less water. */
    @Test
    void sharesOfSaturationAddUpAndALittleMore() {
        SeededCases.check(200, draw -> {
            Solution chloride = Solution.of(Salt.MAGNESIUM_CHLORIDE, draw.between(1, 2000));
            Solution sulfate = Solution.of(Salt.MAGNESIUM_SULFATE, draw.between(1, 1000));
            double sum = Solubility.shareOfSaturation(chloride, 20) + Solubility.shareOfSaturation(sulfate, 20);
            assertThat(Solubility.shareOfSaturation(chloride.and(sulfate), 20))
                    .isGreaterThan(sum)
                    .isLessThan(1.4 * sum);
        });
    }

    @Test
    void saturatedLimewaterIsJustSaturated() {
        for (double t = 0; t <= 40; t += 5) {
            assertThat(Solubility.shareOfSaturation(StandardSolutions.limewater(t), t))
                    .isCloseTo(1, within(1e-9));
        }
        Solubility.ClearRange clear =
                Solubility.clear(StandardSolutions.limewater(20)).orElseThrow();
        assertThat(clear.coldest()).isZero();
        assertThat(clear.warmest()).isCloseTo(20, within(0.1));
        assertThat(Solubility.strongest(StandardSolutions.limewater(30), 10).amount(Salt.CALCIUM_HYDROXIDE))
                .isCloseTo(Limewater.saturated(10), within(1e-6));
    }

    @Test
    void theStrongestSolutionIsSaturatedAndClearFromThere() {
        SeededCases.check(200, draw -> {
            double temperature = draw.between(1, 39);
            Solution some = any(draw);
            Solution most = Solubility.strongest(some, temperature);
            assertThat(Solubility.shareOfSaturation(most, temperature)).isCloseTo(1, within(1e-6));
            assertThat(Solubility.clear(most.times(0.999)).orElseThrow().coldest())
                    .isLessThanOrEqualTo(temperature + 0.1);
            assertThat(Solubility.shareOfSaturation(most.times(1.01), temperature))
                    .isGreaterThan(1);
        });
    }

    private static Solution any(Draw draw) {
        return draw.whole(0, 1) == 0
                ? StandardSolutions.magnesium(draw.between(100, 2000))
                : Solution.of(draw.oneOf(SOLIDS), draw.between(10, 1000));
    }

    @Test
    void whatIsTooStrongAtEveryTemperatureIsNeverClear() {
        assertThat(Solubility.clear(Solution.ofMass(Salt.SODIUM_BICARBONATE, 200)))
                .isEmpty();
        assertThatThrownBy(() -> Solubility.saturated(Salt.SODIUM_CARBONATE, 68))
                .hasMessageContaining("fahrenheit");
    }

    /** Acetic acid mixes with water to the last drop: the strongest is the acid itself, 1049 g/L, 60.05 g/mol, 17.47 mol/L. */
    @Test
    void acidMixesInAnyProportion() {
        Solution acid = Solubility.strongest(Solution.of(Salt.ACETIC_ACID, 800), 20);
        assertThat(acid.amount(Salt.ACETIC_ACID)).isCloseTo(17_470, within(100.0));
        assertThat(Solubility.shareOfSaturation(Solution.of(Salt.ACETIC_ACID, 800), 20))
                .isZero();
    }
}
