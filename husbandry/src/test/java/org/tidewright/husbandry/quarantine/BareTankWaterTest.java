package org.tidewright.husbandry.quarantine;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.tidewright.husbandry.TestPlans;
import org.tidewright.husbandry.advice.Advice;
import org.tidewright.plan.model.Plan;
import org.tidewright.plan.model.UnitSystem;
import org.tidewright.twin.forecast.Quantity;

/**
 * Against a sum done by hand: 40 L, one fish of 10 g, 0.15 g of pellets a day. With L of ammonia a day and c the ammonia at
 * which free ammonia reaches 0.02 mg/L, a daily change of L/c keeps what stands before each change at c: with 0.2166 and 0.33
 * mg/L 65.6 % of the water.
 */
class BareTankWaterTest {
    private static final String SPONGE =
            "    sponge: {foam: 0.6 L, state: live} # kept ripe in the sump of a system that is well\n";
    private static final String CHANGES =
            "water_changes:\n  - {name: change, volume: 15 L, every: 2 d, at: \"19:00\", siphoned: 90 %}\n";

    private static final String[] ONE_FISH = {
        "water_level: 26 cm",
        "water_level: 22.22 cm",
        "{name: wrasse, mass: 5 g, count: 4}",
        "{name: wrasse, mass: 10 g, count: 1}",
        "mass: 0.15 g, times",
        "mass: 0.075 g, times",
        SPONGE,
        "",
        CHANGES,
        ""
    };

    private static String lead(Plan plan) {
        return BareTankWords.of(BareTankWater.of(plan)).lead().text(UnitSystem.METRIC);
    }

    @Test
    void theDailyChangeIsTheLoadOverTheAmmoniaItMayStandAt() {
        assertThat(0.2166 / 0.33).isCloseTo(0.656, within(5e-4));
        BareTankWater water = BareTankWater.of(TestPlans.example("quarantine-box", ONE_FISH));
        double[] ammonia = water.unchanged().course().of(Quantity.AMMONIA);
        double[] free = water.unchanged().course().of(Quantity.FREE_AMMONIA);
        double load = (ammonia[96] - ammonia[24]) / 3;
        double stands = BareTankWater.AMBER / (free[72] / ammonia[72]);
        // Lower pH in the twin's room and droppings that rot later: a smaller change than by hand, by the same law.
        assertThat(water.unchanged().held()).isCloseTo(load / stands, within(0.1 * load / stands));
        assertThat(water.unchanged().held()).isBetween(0.40, 0.656);
        assertThat(water.unchanged().amber()).isBetween(1.52, 2.5);
        assertThat(water.unchanged().red()).isBetween(2.29, 3.6);
        assertThat(water.volume()).isCloseTo(0.040, within(1e-4));
        assertThat(water.food()).isCloseTo(0.15e-3, within(1e-9));
    }

    @Test
    void aBareTankIsToldWhatToChangeAndWhatComesOtherwise() {
        Advice advice = BareTankWords.of(BareTankWater.of(TestPlans.example("quarantine-box", ONE_FISH)));
        String lead = advice.lead().text(UnitSystem.METRIC);
        assertThat(lead)
                .startsWith("Change ")
                .contains("every day", "0.02\u00a0mg/L", "Left alone it gets there", "which harms");
        assertThat(advice.cautions()).contains(Caution.BINDER, Caution.CHANGE);
    }

    @Test
    void aRipeSpongeHoldsItAndItsLossIsTold() {
        BareTankWater water = BareTankWater.of(TestPlans.example("quarantine-box"));
        assertThat(water.unchanged().isCalm()).isTrue();
        assertThat(water.unchanged().held()).isZero();
        assertThat(water.isFiltered()).isTrue();
        assertThat(water.unfiltered().isCalm()).isFalse();
        Advice advice = BareTankWords.of(water);
        assertThat(advice.lead().text(UnitSystem.METRIC)).startsWith("Ammonia is held without any change of water");
        assertThat(advice.remarks().get(0).text(UnitSystem.METRIC))
                .startsWith("If the sponge stops working, as some medicines make it: change ");
    }

    @Test
    void moreFishThanWaterCanBearAreToldSo() {
        assertThat(lead(TestPlans.example("quarantine-box", SPONGE, "", "mass: 0.15 g, times", "mass: 1.5 g, times")))
                .startsWith("No change of water holds it.");
    }

    @Test
    void changesOfThePlanThatAreEnoughAreKept() {
        String lead = lead(TestPlans.example(
                "quarantine-box", SPONGE, "", "volume: 15 L, every: 2 d", "volume: 36 L, every: 1 d"));
        assertThat(lead).startsWith("Keep to the changes of the plan").contains("Without any change it would pass");
    }

    @Test
    void aTankWithoutFishHasNothingToReckonWith() {
        assertThat(lead(TestPlans.example("quarantine-box", "    - {name: wrasse, mass: 5 g, count: 4}\n", "")))
                .startsWith("Put its fish and their food into the plan");
    }
}
