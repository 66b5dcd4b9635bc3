package org.tidewright.husbandry.solution;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.tidewright.husbandry.solution.Recipe.Tools;
import org.tidewright.husbandry.solution.Recipe.Weighing;
import org.tidewright.plan.model.Salt;
import org.tidewright.testkit.Draw;
import org.tidewright.testkit.SeededCases;

class RecipeTest {
    private static final double TANK = 0.2;

    /** Grams of a pure salt for a rise in 200 L: the salt is weighed straight into the tank's water. */
    private static double grams(Salt salt, Supply supply, double rise) {
        Solution tank = Solution.of(salt, supply.fromTank(rise) / supply.of(salt));
        Recipe recipe = Recipe.toMake(tank, TANK, Map.of(), Tools.EXACT);
        return 1000 * recipe.weighings().get(0).mass();
    }

    /**
     * +1.0 dKH in 200 L is 0.35665 200 = 71.33 meq: 71.33 84.007/1000 = 5.99 g NaHCO3, 71.33 105.988/2000 = 3.78 g Na2CO3. +20
     * mg/L of Ca is 4 g: 4 147.014/40.078 = 14.67 g CaCl2 2H2O.
     */
    @Test
    void massesForARiseAreThoseWorkedByHand() {
        assertThat(grams(Salt.SODIUM_BICARBONATE, Supply.ALKALINITY, 1)).isCloseTo(5.99, within(0.005));
        assertThat(grams(Salt.SODIUM_CARBONATE, Supply.ALKALINITY, 1)).isCloseTo(3.78, within(0.005));
        assertThat(grams(Salt.CALCIUM_CHLORIDE, Supply.CALCIUM, 20)).isCloseTo(14.67, within(0.005));
        // Half of 1 dKH from each of two moles of charge: 71.33 74.093/2000 = 2.64 g Ca(OH)2.
        assertThat(grams(Salt.CALCIUM_HYDROXIDE, Supply.ALKALINITY, 1)).isCloseTo(2.64, within(0.005));
    }

    /** 71.33/0.9523 = 74.9 mL of 80 g/L of bicarbonate, 71.33/2.8305 = 25.2 mL of 150 g/L of carbonate. */
    @Test
    void dosesForARiseAreThoseWorkedByHand() {
        Strength a1 = made(Salt.SODIUM_BICARBONATE, 80);
        Strength a2 = made(Salt.SODIUM_CARBONATE, 150);
        double rise = Supply.ALKALINITY.fromTank(1);
        assertThat(1e6 * a1.doseFor(rise, TANK)).isCloseTo(74.9, within(0.05));
        assertThat(1e6 * a2.doseFor(rise, TANK)).isCloseTo(25.2, within(0.05));
    }

    private static Strength made(Salt salt, double gramsPerLitre) {
        return Recipe.toMake(Solution.ofMass(salt, gramsPerLitre), 1e-3, Map.of(), Tools.EXACT)
                .strength(Supply.ALKALINITY);
    }

    /**
     * 70 g of a dihydrate of 75 % CaCl2 in 1 L: 52.5 g or 52.5/110.98 = 0.47306 mol, 18.96 mg of Ca in a mL. Its doubt of 0.018
     * is 2.4 %, the scale's 0.5 of 70 g 0.71 %, the jug's 1 %: sqrt(2.4² + 0.71² + 1²) = 2.70 %.
     */
    @Test
    void purityScaleAndJugAddUpAsErrorsDo() {
        Recipe recipe =
                new Recipe(List.of(new Weighing(SoldSalt.usual(Salt.CALCIUM_CHLORIDE), 0.070)), 1e-3, Tools.KITCHEN);
        Strength calcium = recipe.strength(Supply.CALCIUM);
        assertThat(calcium.value() * 40.078 / 1000).isCloseTo(18.96, within(0.005));
        assertThat(calcium.standardError() / calcium.value()).isCloseTo(0.0270, within(5e-5));
        assertThat(recipe.strength(Supply.ALKALINITY)).isEqualTo(new Strength(Supply.ALKALINITY, 0, 0));
    }

    /** 3 and 1 mol of magnesium, 1 % and 4 % unsure: sqrt(0.03² + 0.04²) = 0.05 of 4 mol. */
    @Test
    void errorsOfTwoSaltsDoNotDependOnOneAnother() {
        SoldSalt chloride = new SoldSalt(Salt.MAGNESIUM_CHLORIDE, 1, 0.01);
        SoldSalt sulfate = new SoldSalt(Salt.MAGNESIUM_SULFATE, 1, 0.04);
        Recipe recipe = new Recipe(
                List.of(new Weighing(chloride, chloride.massHolding(3)), new Weighing(sulfate, sulfate.massHolding(1))),
                1,
                Tools.EXACT);
        assertThat(recipe.strength(Supply.MAGNESIUM).value()).isCloseTo(4, within(1e-12));
        assertThat(recipe.strength(Supply.MAGNESIUM).standardError()).isCloseTo(0.05, within(1e-12));
    }

    @Test
    void aRecipeGivesTheWantedSolutionBack() {
        SeededCases.check(draw -> {
            Solution wanted = any(draw);
            Recipe recipe = Recipe.toMake(wanted, draw.between(1e-4, 1), shelf(draw), Tools.KITCHEN);
            Solution made = recipe.solution();
            assertThat(made.content().keySet()).isEqualTo(wanted.content().keySet());
            for (Salt salt : wanted.content().keySet()) {
                assertThat(made.amount(salt)).isCloseTo(wanted.amount(salt), within(1e-13 * wanted.amount(salt)));
            }
            for (Supply supply : Supply.values()) {
                double strength = wanted.total(supply::of);
                assertThat(recipe.strength(supply).value()).isCloseTo(strength, within(1e-12 * Math.abs(strength)));
            }
        });
    }

    @Test
    void massesGrowInProportionToTheVolume() {
        SeededCases.check(draw -> {
            Solution wanted = any(draw);
            Map<Salt, SoldSalt> shelf = shelf(draw);
            double volume = draw.between(1e-4, 1);
            double factor = draw.between(0.01, 100);
            List<Weighing> one =
                    Recipe.toMake(wanted, volume, shelf, Tools.EXACT).weighings();
            List<Weighing> many =
                    Recipe.toMake(wanted, factor * volume, shelf, Tools.EXACT).weighings();
            for (int i = 0; i < one.size(); i++) {
                double expected = factor * one.get(i).mass();
                assertThat(many.get(i).mass()).isCloseTo(expected, within(1e-13 * expected));
            }
        });
    }

    private static Solution any(Draw draw) {
        Solution solution = Solution.of(draw.oneOf(Salt.values()), draw.between(1, 1000));
        return draw.whole(0, 1) == 0
                ? solution
                : solution.and(
                        Solution.of(draw.oneOf(Salt.SODIUM_CARBONATE, Salt.MAGNESIUM_SULFATE), draw.between(1, 1000)));
    }

    private static Map<Salt, SoldSalt> shelf(Draw draw) {
        Map<Salt, SoldSalt> shelf = new EnumMap<>(Salt.class);
        for (Salt salt : Salt.values()) {
            shelf.put(salt, new SoldSalt(salt, draw.between(0.3, 2.1), 0));
        }
        shelf.remove(draw.oneOf(Salt.values()));
        return shelf;
    }

    /**
     * 150 g/L of Na2CO3, 13.2 % by mass: between the handbook's 1.1029 at 10 % and 1.1463 at 14 % (CRC, from memory) lies
     * 1.137. So a litre weighs 1137 g and holds 987 g of water, and of a salt of 98 % 153.1 g are weighed in: 984 g to pour.
     */
    @Test
    void waterIsTheRestOfTheMass() {
        Solution stock = Solution.ofMass(Salt.SODIUM_CARBONATE, 150);
        assertThat(Recipe.toMake(stock, 1e-3, Map.of(), Tools.EXACT).water(20)).isCloseTo(0.987, within(0.002));
        Map<Salt, SoldSalt> shelf = Map.of(Salt.SODIUM_CARBONATE, new SoldSalt(Salt.SODIUM_CARBONATE, 0.98, 0));
        assertThat(Recipe.toMake(stock, 1e-3, shelf, Tools.EXACT).water(20)).isCloseTo(0.984, within(0.002));
    }

    @Test
    void refusesNonsense() {
        assertThatThrownBy(() -> new Recipe(List.of(), 1e-3, Tools.EXACT)).hasMessageContaining("at least one");
        assertThatThrownBy(() ->
                        new Recipe(List.of(new Weighing(SoldSalt.pure(Salt.POTASSIUM_CHLORIDE), 0.1)), 0, Tools.EXACT))
                .hasMessageContaining("volume of the solution");
        assertThatThrownBy(() -> new Tools(0, 1.5)).hasMessageContaining("is it in percent?");
        assertThatThrownBy(() -> Recipe.toMake(
                        Solution.of(Salt.CALCIUM_CHLORIDE, 1),
                        1e-3,
                        Map.of(Salt.CALCIUM_CHLORIDE, SoldSalt.pure(Salt.CALCIUM_CHLORIDE_ANHYDROUS)),
                        Tools.EXACT))
                .hasMessageContaining("under its own name");
    }
}
