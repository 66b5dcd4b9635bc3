package org.tidewright.husbandry.forecast;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.tidewright.husbandry.TestPlans;

/** Air that a plan does not tell of is told to the keeper. */
class AssumedAirTest {
    @Test
    void aPlanWithoutPeopleIsToldWhatItsRoomIsTakenFor() {
        assertThat(AssumedAir.of(TestPlans.example("window-nano").room()))
                .hasValueSatisfying(told -> assertThat(told).contains("600\u00a0ppm", "people or carbon_dioxide"));
    }

    @Test
    void aPlanThatTellsOfItsAirIsToldNothing() {
        assertThat(AssumedAir.of(TestPlans.example("harbour-room").room())).isEmpty();
        assertThat(AssumedAir.of(TestPlans.example(
                                "window-nano", "  humidity: 45 %\n", "  humidity: 45 %\n  carbon_dioxide: 700 ppm\n")
                        .room()))
                .isEmpty();
    }
}
