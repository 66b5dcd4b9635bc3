package org.tidewright.husbandry.solution;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.Random;
import org.assertj.core.data.Percentage;
import org.junit.jupiter.api.Test;
import org.tidewright.husbandry.solution.Strength.Measured;
import org.tidewright.testkit.SeededCases;

class StrengthTest {
    /** 0.1 dKH is 0.035665 meq/L: 100 L of it in 1 mL are 3.5665 meq/mL, 5 % of it 0.178. */
    @Test
    void aLabelOfATenthOfADegreeInAHundredLitresIsThatStrong() {
        Strength label = Strength.fromLabel(Supply.ALKALINITY, Supply.ALKALINITY.fromTank(0.1), 0.1, 1e-6);
        assertThat(label.value()).isCloseTo(3566.5, within(0.1));
        assertThat(label.standardError()).isCloseTo(178, within(0.5));
    }

    /** "10 mL raise 100 L by 5 mg/L": 500 mg of Ca in 10 mL, 50 mg/mL; 50/40.078 = 1.2476 mol/L. */
    @Test
    void aLabelOfCalciumIsReadInMilligrams() {
        Strength label = Strength.fromLabel(Supply.CALCIUM, Supply.CALCIUM.fromTank(5), 0.1, 10e-6);
        assertThat(label.value()).isCloseTo(1247.6, within(0.05));
        assertThat(Supply.CALCIUM.fromBottle(50)).isCloseTo(1247.6, within(0.05));
        assertThat(Supply.ALKALINITY.fromBottle(0.952)).isCloseTo(952, within(1e-9));
    }

    /**
     * 40 mL into 150 L: from 7.4 to 8.2 dKH, each ± 0.15: 0.8 ± 0.212 dKH, 26.5 %; the water ± 5 %, the dose ± 2.5 %: together
     * 27.1 %. 0.8 0.35665 150 = 42.80 meq in 40 mL, 1.070 ± 0.290 meq/mL.
     */
    @Test
    void aRiseOfOnesOwnTellsTheStrengthAndItsError() {
        double degree = Supply.ALKALINITY.fromTank(1);
        Strength strength = Strength.fromRise(
                Supply.ALKALINITY,
                new Measured(0.8 * degree, Math.hypot(0.15, 0.15) * degree),
                new Measured(0.150, 0.0075),
                new Measured(40e-6, 1e-6));
        assertThat(strength.value()).isCloseTo(1070, within(0.5));
        assertThat(strength.standardError()).isCloseTo(290, within(1.0));
    }

    /** 200 000 draws of three normal errors of 4, 3 and 2 %, seed 7: to first order 5.4 %. */
    @Test
    void errorsPropagateAsDrawsDo() {
        Strength strength = Strength.fromRise(
                Supply.CALCIUM, new Measured(0.5, 0.02), new Measured(0.3, 0.009), new Measured(1e-4, 2e-6));
        Random random = new Random(7);
        int draws = 200_000;
        double sum = 0;
        double squares = 0;
        for (int i = 0; i < draws; i++) {
            double drawn = (0.5 + 0.02 * random.nextGaussian())
                    * (0.3 + 0.009 * random.nextGaussian())
                    / (1e-4 + 2e-6 * random.nextGaussian());
            sum += drawn;
            squares += drawn * drawn;
        }
        double mean = sum / draws;
        double spread = Math.sqrt(squares / draws - mean * mean);
        assertThat(strength.value()).isCloseTo(mean, Percentage.withPercentage(0.1));
        assertThat(strength.standardError()).isCloseTo(spread, Percentage.withPercentage(1));
    }

    @Test
    void doseRiseAndStrengthGiveEachOtherBack() {
        SeededCases.check(draw -> {
            Supply supply = draw.oneOf(Supply.values());
            Strength strength = new Strength(supply, draw.between(1, 5000), 0);
            double water = draw.between(1e-3, 10);
            double rise = draw.between(1e-4, 2);
            double dose = strength.doseFor(rise, water);
            assertThat(strength.rise(dose, water)).isCloseTo(rise, within(1e-13 * rise));
            Strength again =
                    Strength.fromRise(supply, new Measured(rise, 0), new Measured(water, 0), new Measured(dose, 0));
            assertThat(again.value()).isCloseTo(strength.value(), within(1e-12 * strength.value()));
            assertThat(again.standardError()).isZero();
        });
    }

    @Test
    void refusesNonsense() {
        assertThatThrownBy(() -> Strength.fromRise(
                        Supply.CALCIUM, new Measured(-1, 0.1), new Measured(1, 0), new Measured(1, 0)))
                .hasMessageContaining("rise in the water");
        assertThatThrownBy(() -> new Strength(Supply.CALCIUM, 0, 0).doseFor(1, 1))
                .hasMessageContaining("strength");
        assertThatThrownBy(() -> new Strength(Supply.CALCIUM, Double.NaN, 0)).hasMessageContaining("strength");
    }
}
