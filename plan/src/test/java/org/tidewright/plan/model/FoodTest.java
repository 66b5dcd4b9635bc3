package org.tidewright.plan.model;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

class FoodTest {
    /** Protein by the Kjeldahl factor. */
    private static final double PROTEIN_PER_NITROGEN = 6.25;

    /**
     * By mass: pure protein has 52 % carbon and 16 % nitrogen, C:N 3.25, and nothing alive has less; plankton has 5.7 (106
     * moles to 16, Redfield) and large algae up to about 12. N:P of plankton is 7.2.
     */
    @ParameterizedTest
    @EnumSource(Food.class)
    void carbonToNitrogenIsThatOfLivingMatter(Food food) {
        assertThat(food.carbon() / food.nitrogen()).isBetween(3.25, 12.0);
        assertThat(food.nitrogen() / food.phosphorus()).isBetween(4.0, 20.0);
    }

    @ParameterizedTest
    @EnumSource(Food.class)
    void thePartsAreLessThanTheWhole(Food food) {
        assertThat(food.water() + food.nitrogen() * PROTEIN_PER_NITROGEN + food.phosphorus())
                .isLessThan(1);
    }

    /** USDA National Nutrient Database, shrimp, mixed species, raw: water 75.9 %, protein 20.3 %, phosphorus 205 mg/100 g. */
    @Test
    void choppedSeafoodIsNearTheFoodTablesShrimp() {
        assertThat(Food.CHOPPED_SEAFOOD.water()).isCloseTo(0.759, within(0.01));
        assertThat(Food.CHOPPED_SEAFOOD.nitrogen() * PROTEIN_PER_NITROGEN).isCloseTo(0.203, within(0.01));
        assertThat(Food.CHOPPED_SEAFOOD.phosphorus()).isCloseTo(0.00205, within(0.0001));
    }

    /** Hwang, Ki and Chung 2013, Prev. Nutr. Food Sci. 18, 139: moisture 3.66-6.74 %, protein 32.16-36.88 %. */
    @Test
    void seaweedSheetIsWithinThePublishedLaver() {
        assertThat(Food.SEAWEED_SHEET.water()).isBetween(0.0366, 0.0674);
        assertThat(Food.SEAWEED_SHEET.nitrogen() * PROTEIN_PER_NITROGEN).isBetween(0.3216, 0.3688);
    }
}
