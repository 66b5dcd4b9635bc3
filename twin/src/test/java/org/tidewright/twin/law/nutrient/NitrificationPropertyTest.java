package org.tidewright.twin.law.nutrient;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.tidewright.testkit.Draw;
import org.tidewright.testkit.SeededCases;

class NitrificationPropertyTest {
    private static Nitrifiers guild(Draw draw) {
        return draw.oneOf(Nitrifiers.AMMONIA_OXIDISERS, Nitrifiers.NITRITE_OXIDISERS);
    }

    @Test
    void activityIsAShareThatRisesWithFoodAndOxygenAndFallsWithFreeAmmonia() {
        SeededCases.check(draw -> {
            Nitrifiers guild = guild(draw);
            double food = draw.between(0, 10);
            double oxygen = draw.between(0, 0.5);
            double free = draw.between(0, 1);
            double activity = guild.activity(food, oxygen, free);
            assertThat(activity).isBetween(0.0, 1.0);
            assertThat(guild.activity(food * 1.1, oxygen, free)).isGreaterThanOrEqualTo(activity);
            assertThat(guild.activity(food, oxygen * 1.1, free)).isGreaterThanOrEqualTo(activity);
            assertThat(guild.activity(food, oxygen, free * 1.1)).isLessThanOrEqualTo(activity);
        });
    }

    @Test
    void nothingIsOxidisedWithoutFoodOrOxygen() {
        assertThat(Nitrifiers.AMMONIA_OXIDISERS.activity(0, 0.2, 0)).isZero();
        assertThat(Nitrifiers.NITRITE_OXIDISERS.activity(0.1, 0, 0)).isZero();
        assertThat(Nitrifiers.NITRITE_OXIDISERS.activity(-1e-9, 0.2, -1e-9)).isZero();
        assertThat(Nitrifiers.NITRITE_OXIDISERS.oxidised(0, 1, 1)).isZero();
    }

    @Test
    void nitrogenBuiltIntoCellsIsKeptOrGivenBack() {
        SeededCases.check(draw -> {
            Nitrifiers guild = guild(draw);
            double most = draw.between(1e-9, 1e-4);
            double capacity = most * draw.between(0, 1);
            double warmth = Nitrification.warmth(draw.between(0, 40), Nitrification.PER_KELVIN.usual());
            double activity = draw.between(0, 1);
            double oxidised = guild.oxidised(capacity, warmth, activity);
            double change = guild.capacityChange(capacity, most, warmth, activity);
            double back = guild.givenBack(oxidised, change);
            double taken = guild.takenPerOxidised() * oxidised;
            assertThat(back).isGreaterThanOrEqualTo(-1e-12 * taken);
            assertThat(oxidised + guild.cells(change) + back).isCloseTo(taken, within(1e-12 * taken));
            assertThat(guild.capacity(guild.cells(capacity))).isCloseTo(capacity, within(1e-12 * capacity));
        });
    }

    @Test
    void aFullSurfaceGrowsNoFurtherAndAStarvedOneDeclines() {
        Nitrifiers guild = Nitrifiers.AMMONIA_OXIDISERS;
        assertThat(guild.capacityChange(1e-6, 1e-6, 1, 1)).isZero();
        assertThat(guild.capacityChange(1e-6, 1e-6, 1, 0)).isCloseTo(-guild.decay() * 1e-6, within(1e-24));
    }

    @Test
    void nonsenseIsRefused() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Nitrifiers.AMMONIA_OXIDISERS.activity(Double.NaN, 0.2, 0))
                .withMessageContaining("concentration is NaN mol/m^3");
        assertThatIllegalArgumentException().isThrownBy(() -> Nitrification.warmth(300, 1.08));
        assertThatIllegalArgumentException().isThrownBy(() -> new Spread(2, 1, 3));
    }
}
