package org.tidewright.twin.contract;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.tidewright.twin.run.Network;

/**
 * Alkalinity follows from charge: the rules of Wolf-Gladrow, Zeebe, Klaas, Koertzinger and Dickson 2007, Mar. Chem.
 * 106, 287-300, for what each process does to it. All numbers are per mole.
 */
class RecipeTest {
    private static final double ROUNDING = 1e-12;

    private final Network.Builder builder = new Network.Builder(Layout.OF_ALL, 1023, 3990);
    private final Body air = builder.outside("air");
    private final Body water = builder.body("water");
    private final Body matter = builder.body("matter");

    private static double alkalinity(Recipe recipe, Body body) {
        double sum = 0;
        for (int line = 0; line < recipe.size(); line++) {
            sum += recipe.place(line) == body.at(Stock.ALKALINITY) ? recipe.amount(line) : 0;
        }
        return sum;
    }

    private void expect(double alkalinity, Recipe.Builder recipe) {
        assertThat(alkalinity(recipe.build(), water)).isCloseTo(alkalinity, within(ROUNDING));
    }

    @Test
    void nitrificationOfAnAmmoniumTakesTwoOfAlkalinity() {
        expect(
                -2,
                Recipe.named("nitrification")
                        .takes(water, Stock.AMMONIA, 1)
                        .gives(water, Stock.NITRATE, 1)
                        .moves(Stock.OXYGEN, water, air, 2));
    }

    @Test
    void eachOfItsTwoStepsHasItsShare() {
        expect(-2, Recipe.named("to nitrite").takes(water, Stock.AMMONIA, 1).gives(water, Stock.NITRITE, 1));
        expect(0, Recipe.named("to nitrate").takes(water, Stock.NITRITE, 1).gives(water, Stock.NITRATE, 1));
    }

    @Test
    void denitrificationGivesOneBack() {
        expect(
                1,
                Recipe.named("denitrification")
                        .takes(water, Stock.NITRATE, 1)
                        .gives(air, Stock.NITROGEN_GAS, 1)
                        .takes(matter, Stock.ORGANIC_CARBON, 1.25)
                        .gives(water, Stock.INORGANIC_CARBON, 1.25));
    }

    @Test
    void nitrateTakenUpGivesOneAndAmmoniumTakenUpTakesOne() {
        expect(1, Recipe.named("nitrate").takes(water, Stock.NITRATE, 1).gives(matter, Stock.ORGANIC_NITROGEN, 1));
        expect(-1, Recipe.named("ammonium").takes(water, Stock.AMMONIA, 1).gives(matter, Stock.ORGANIC_NITROGEN, 1));
    }

    @Test
    void calcificationTakesTwoWhateverTheMetal() {
        expect(
                -2,
                Recipe.named("aragonite")
                        .moves(Stock.CALCIUM, water, matter, 1)
                        .moves(Stock.INORGANIC_CARBON, water, matter, 1));
        expect(
                -2,
                Recipe.named("magnesian calcite")
                        .moves(Stock.CALCIUM, water, matter, 0.85)
                        .moves(Stock.MAGNESIUM, water, matter, 0.15)
                        .moves(Stock.INORGANIC_CARBON, water, matter, 1));
    }

    @Test
    void phosphateTakenUpGivesOneAndSetFreeTakesOne() {
        expect(1, Recipe.named("uptake").takes(water, Stock.PHOSPHATE, 1).gives(matter, Stock.ORGANIC_PHOSPHORUS, 1));
        expect(
                -1,
                Recipe.named("release")
                        .takes(matter, Stock.ORGANIC_PHOSPHORUS, 1)
                        .gives(water, Stock.PHOSPHATE, 1));
    }

    /** Algae of Redfield's composition: 17 with nitrate (16 + 1), -15 with ammonium (-16 + 1); sulfate is left out. */
    @Test
    void growthOfRedfieldMatterTakesOrGivesWhatItsNutrientsCarry() {
        expect(17, growth(Stock.NITRATE, 138));
        expect(-15, growth(Stock.AMMONIA, 106));
    }

    private Recipe.Builder growth(Stock nitrogen, double oxygen) {
        return Recipe.named("growth")
                .takes(water, Stock.INORGANIC_CARBON, 106)
                .gives(matter, Stock.ORGANIC_CARBON, 106)
                .takes(water, nitrogen, 16)
                .gives(matter, Stock.ORGANIC_NITROGEN, 16)
                .takes(water, Stock.PHOSPHATE, 1)
                .gives(matter, Stock.ORGANIC_PHOSPHORUS, 1)
                .moves(Stock.OXYGEN, air, water, oxygen);
    }

    @Test
    void carbonDioxideTakenUpOrGivenOffLeavesAlkalinity() {
        Recipe breath = Recipe.named("breath")
                .takes(matter, Stock.ORGANIC_CARBON, 1)
                .gives(water, Stock.INORGANIC_CARBON, 1)
                .moves(Stock.OXYGEN, water, air, 1)
                .build();
        for (int line = 0; line < breath.size(); line++) {
            assertThat(breath.place(line)).isNotEqualTo(water.at(Stock.ALKALINITY));
        }
    }

    /** What leaves one body's alkalinity is found in the other's, so that charge is kept over both. */
    @Test
    void alkalinityOfWhatMovesTurnsUpAtTheOtherEnd() {
        Recipe lime = Recipe.named("lime")
                .moves(Stock.CALCIUM, water, matter, 1)
                .moves(Stock.INORGANIC_CARBON, water, matter, 1)
                .build();
        assertThat(alkalinity(lime, matter)).isCloseTo(2, within(ROUNDING));
        assertThat(alkalinity(lime, water)).isCloseTo(-2, within(ROUNDING));
    }

    @Test
    void nothingIsMadeOfNothing() {
        assertThatThrownBy(() -> Recipe.named("alchemy")
                        .takes(water, Stock.AMMONIA, 1)
                        .gives(water, Stock.NITRATE, 0.98)
                        .build())
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("alchemy")
                .hasMessageContaining("NITROGEN");
        assertThatThrownBy(() -> Recipe.named("free oxygen")
                        .gives(water, Stock.OXYGEN, 1)
                        .build())
                .hasMessageContaining("OXYGEN");
        assertThatThrownBy(() -> Recipe.named("carbon lost")
                        .takes(matter, Stock.ORGANIC_CARBON, 1)
                        .gives(water, Stock.INORGANIC_CARBON, 1 - 1e-9)
                        .build())
                .hasMessageContaining("CARBON");
        assertThatThrownBy(() -> Recipe.named("calcium for magnesium")
                        .takes(water, Stock.CALCIUM, 1)
                        .gives(matter, Stock.MAGNESIUM, 1)
                        .build())
                .hasMessageContaining("CALCIUM");
    }

    @Test
    void alkalinityCannotBeStated() {
        Recipe.Builder recipe = Recipe.named("buffer");
        assertThatThrownBy(() -> recipe.gives(water, Stock.ALKALINITY, 2))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("follows from the other changes");
    }

    @Test
    void amountsMustBeNumbers() {
        Recipe.Builder recipe = Recipe.named("unknown");
        assertThatThrownBy(() -> recipe.gives(water, Stock.NITRATE, Double.NaN))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("NaN");
    }
}
