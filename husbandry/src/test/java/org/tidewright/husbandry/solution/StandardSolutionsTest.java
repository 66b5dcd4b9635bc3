package org.tidewright.husbandry.solution;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.EnumMap;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.tidewright.husbandry.solution.Solution.Clash;
import org.tidewright.plan.model.Salt;
import org.tidewright.testkit.Draw;
import org.tidewright.testkit.SeededCases;

/**
 * Hand-worked with the molar masses that chemistry texts print: NaHCO3 84.007, Na2CO3 105.988, CaCl2 2H2O 147.014, MgCl2
 * 6H2O 203.301, MgSO4 7H2O 246.474, NaOH 39.997, Ca 40.078, Mg 24.305 g/mol.
 */
class StandardSolutionsTest {
    private static final Salt[] ALKALINE = {Salt.SODIUM_BICARBONATE, Salt.SODIUM_CARBONATE, Salt.SODIUM_HYDROXIDE};

    private static double gramsPerLitre(Solution solution, Salt salt, double molarMass) {
        return solution.amount(salt) * molarMass / 1000;
    }

    /** 80/84.007 = 0.9523 and 2 150/105.988 = 2.8305 and 40/39.997 = 1.0001 meq/mL. */
    @Test
    void alkalineStocksAreAsStrongAsTheirFormulasSay() {
        assertThat(Solution.ofMass(Salt.SODIUM_BICARBONATE, 80).total(Salt::alkalinity))
                .isCloseTo(952.3, within(0.05));
        assertThat(Solution.ofMass(Salt.SODIUM_CARBONATE, 150).total(Salt::alkalinity))
                .isCloseTo(2830.5, within(0.1));
        assertThat(Solution.ofMass(Salt.SODIUM_HYDROXIDE, 40).total(Salt::alkalinity))
                .isCloseTo(1000.1, within(0.05));
        assertThat(gramsPerLitre(
                        StandardSolutions.alkaline(Salt.SODIUM_CARBONATE, 2830.5), Salt.SODIUM_CARBONATE, 105.988))
                .isCloseTo(150.0, within(0.01));
    }

    /** 0.9523/2 147.014 = 70.0 g/L, 19.08 mg of Ca in a mL; 2.8305/2 147.014 = 208.1 g/L, 56.72 mg. */
    @Test
    void calciumPartsMatchTheirAlkalinePartsVolumeForVolume() {
        Solution c1 = StandardSolutions.calciumMatching(Solution.ofMass(Salt.SODIUM_BICARBONATE, 80), 0);
        assertThat(gramsPerLitre(c1, Salt.CALCIUM_CHLORIDE, 147.014)).isCloseTo(70.0, within(0.05));
        assertThat(gramsPerLitre(c1, Salt.CALCIUM_CHLORIDE, 40.078)).isCloseTo(19.08, within(0.005));
        Solution c2 = StandardSolutions.calciumMatching(Solution.ofMass(Salt.SODIUM_CARBONATE, 150), 0);
        assertThat(gramsPerLitre(c2, Salt.CALCIUM_CHLORIDE, 147.014)).isCloseTo(208.1, within(0.05));
        assertThat(gramsPerLitre(c2, Salt.CALCIUM_CHLORIDE, 40.078)).isCloseTo(56.72, within(0.01));
    }

    /** f = 0.9 0.005 + 0.1 0.15 = 0.0195: per meq 20.039 (1 - f) = 19.65 mg of Ca and 12.1525 f = 0.237 mg of Mg. */
    @Test
    void aShareOfMagnesiumTakesThePlaceOfCalcium() {
        Solution part = StandardSolutions.calciumMatching(
                StandardSolutions.alkaline(Salt.SODIUM_BICARBONATE, 1000), 0.9 * 0.005 + 0.1 * 0.15);
        assertThat(part.total(Salt::calcium) * 40.078 / 1000).isCloseTo(19.65, within(0.005));
        assertThat(part.total(Salt::magnesium) * 24.305 / 1000).isCloseTo(0.237, within(0.0005));
    }

    /**
     * 10 g of Mg for 200 L and 50 mg/L: 0.41144 mol. With SO4/Cl of the sea, 0.02824/0.54587 = 0.05173: x + y = 0.41144, y =
     * 2 0.05173 x: x = 0.37286 mol or 75.8 g of MgCl2 6H2O, y = 0.03858 mol or 9.5 g of MgSO4 7H2O.
     */
    @Test
    void magnesiumKeepsTheSulfateOfTheSea() {
        Solution part = StandardSolutions.magnesium(0.41144); // in a cubic metre
        assertThat(part.amount(Salt.MAGNESIUM_CHLORIDE) * 203.301).isCloseTo(75.8, within(0.05));
        assertThat(part.amount(Salt.MAGNESIUM_SULFATE) * 246.474).isCloseTo(9.5, within(0.05));
        assertThat(part.total(Salt::sulfate) / part.total(Salt::chloride)).isCloseTo(0.02824 / 0.54587, within(1e-5));
        assertThat(part.total(Salt::magnesium)).isCloseTo(0.41144, within(1e-12));
    }

    /** Bates, Bower and Smith 1956: 0.0203 mol/L at 25 degC, 40.6 meq/L, 814 mg/L of Ca. */
    @Test
    void limewaterIsTheTwins() {
        Solution lime = StandardSolutions.limewater(25);
        assertThat(lime.total(Salt::alkalinity)).isCloseTo(40.6, within(1e-9));
        assertThat(lime.total(Salt::calcium) * 40.078).isCloseTo(814, within(0.5));
        assertThat(lime.clashes()).isEmpty();
    }

    @Test
    void everyMatchingPartHasOneDivalentIonForTwoOfAlkalinity() {
        SeededCases.check(draw -> {
            Solution alkaline = StandardSolutions.alkaline(draw.oneOf(ALKALINE), draw.between(1, 5000));
            Solution part = StandardSolutions.calciumMatching(alkaline, draw.between(0, 0.5));
            double divalent = part.total(Salt::calcium) + part.total(Salt::magnesium);
            assertThat(2 * divalent / alkaline.total(Salt::alkalinity)).isCloseTo(1, within(1e-14));
            assertThat(part.clashes()).isEmpty();
        });
    }

    /** What charge its other ions leave is what carbonate, bicarbonate and hydroxide carry: the alkalinity. */
    @Test
    void everySolutionIsNeutral() {
        SeededCases.check(draw -> {
            Map<Salt, Double> content = new EnumMap<>(Salt.class);
            content.put(Salt.SODIUM_CARBONATE, 1.0);
            for (Salt salt : Salt.values()) {
                content.put(salt, draw.between(0, 1000));
            }
            Solution solution = new Solution(content);
            assertThat(solution.charge()).isCloseTo(solution.total(Salt::alkalinity), within(1e-9));
        });
    }

    @Test
    void solutionsAddUpAndScale() {
        SeededCases.check(draw -> {
            Solution one = any(draw);
            Solution other = any(draw);
            double factor = draw.between(1e-3, 10);
            Solution both = one.and(other).times(factor);
            for (Salt salt : Salt.values()) {
                double sum = factor * (one.amount(salt) + other.amount(salt));
                assertThat(both.amount(salt)).isCloseTo(sum, within(1e-14 * sum));
            }
        });
    }

    private static Solution any(Draw draw) {
        return Solution.of(draw.oneOf(Salt.values()), draw.between(1e-3, 1000));
    }

    @Test
    void knowsWhatFallsOut() {
        Solution soda = Solution.of(Salt.SODIUM_CARBONATE, 1);
        Solution calcium = Solution.of(Salt.CALCIUM_CHLORIDE, 100);
        Solution magnesium = Solution.of(Salt.MAGNESIUM_CHLORIDE, 100);
        Solution epsom = Solution.of(Salt.MAGNESIUM_SULFATE, 100);
        assertThat(soda.and(calcium).clashes()).containsExactly(Clash.CALCIUM_WITH_ALKALINITY);
        assertThat(soda.and(magnesium).clashes()).containsExactly(Clash.MAGNESIUM_WITH_ALKALINITY);
        assertThat(calcium.and(epsom).clashes()).containsExactly(Clash.CALCIUM_WITH_SULFATE);
        assertThat(calcium.and(magnesium).clashes()).isEmpty();
        assertThat(magnesium.and(epsom).clashes()).isEmpty();
        assertThat(StandardSolutions.limewater(20).and(calcium).clashes()).contains(Clash.CALCIUM_WITH_ALKALINITY);
        // 0.205 % by mass of CaSO4, 136.14 g/mol: 15 mmol/L of each stay dissolved, 20 do not.
        assertThat(Solution.of(Salt.CALCIUM_CHLORIDE, 15)
                        .and(Solution.of(Salt.MAGNESIUM_SULFATE, 15))
                        .clashes())
                .isEmpty();
        assertThat(Solution.of(Salt.CALCIUM_CHLORIDE, 20)
                        .and(Solution.of(Salt.MAGNESIUM_SULFATE, 20))
                        .clashes())
                .isNotEmpty();
    }

    @Test
    void refusesNonsense() {
        assertThatThrownBy(() -> StandardSolutions.alkaline(Salt.CALCIUM_CHLORIDE, 1))
                .hasMessageContaining("brings no alkalinity");
        assertThatThrownBy(() -> StandardSolutions.calciumMatching(Solution.of(Salt.SODIUM_CARBONATE, 1), 2))
                .hasMessageContaining("is it in percent?");
        assertThatThrownBy(() -> StandardSolutions.calciumMatching(Solution.of(Salt.CALCIUM_CHLORIDE, 1), 0))
                .hasMessageContaining("alkalinity of the part to be matched");
        assertThatThrownBy(() -> Solution.of(Salt.SODIUM_CARBONATE, 0)).hasMessageContaining("at least one salt");
        assertThatThrownBy(() -> Solution.of(Salt.SODIUM_CARBONATE, Double.NaN))
                .hasMessageContaining("sodium carbonate");
    }
}
