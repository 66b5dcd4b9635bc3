package org.tidewright.plan.species;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.tidewright.plan.species.CatalogueTable.Row;

/** What must hold in every row of fish. */
class FishRowTest {
    /** Thickness of the body over its depth, from memory; the least certain number of the check it serves. */
    private static final Map<String, Double> THICKNESS = Map.of(
            "deep_disc",
            0.30,
            "oval",
            0.42,
            "perching",
            0.55,
            "torpedo",
            0.60,
            "seahorse",
            0.60,
            "slender",
            0.70,
            "eel",
            0.80,
            "box",
            0.80);

    static List<Row> fish() {
        return CatalogueTable.FISH.rows();
    }

    @ParameterizedTest
    @MethodSource("fish")
    void aFishHasASizeAndAWeightThatFishHave(Row fish) {
        double usual = fish.number("usual_length_cm");
        assertThat(usual).isPositive().isLessThanOrEqualTo(fish.number("max_length_cm"));
        // The tenth of a gram is a pygmy goby of 2 cm; 30 kg the humphead wrasse, which is there to be refused.
        assertThat(fish.weight(usual)).isBetween(0.04, 30_000.0);
        assertThat(fish.number("weight_b")).isBetween(2.4, 3.3);
        assertThat(fish.has("asymptote_cm"))
                .isEqualTo(fish.has("growth_per_year"))
                .isEqualTo(fish.has("growth_source"));
        assertThat(fish.number("body_depth_share")).isBetween(0.01, 0.9);
        assertThat(fish.number("prey_depth_share")).isBetween(0.01, 1.0);
    }

    @Test
    void mostKeptFishWeighBetweenAGramAndTwoKilograms() {
        assertThat(fish().stream().map(row -> row.weight(row.number("usual_length_cm"))))
                .filteredOn(weight -> weight < 1 || weight > 2000)
                .hasSizeLessThan(fish().size() / 8);
    }

    /**
     * Weights were taken or guessed without a look at the depths, and depths without a look at the weights. A body is drawn
     * as four fifths of the ellipsoid of its depth, 0.8 of the total length long, a twentieth heavier than water.
     */
    @ParameterizedTest
    @MethodSource("fish")
    void theWeightIsThatOfTheBodyItsDepthDraws(Row fish) {
        double length = fish.number("usual_length_cm");
        double depth = fish.number("body_depth_share") * length;
        double thickness = Objects.requireNonNull(THICKNESS.get(fish.text("shape"))) * depth;
        double drawn = 1.05 * 0.8 * Math.PI / 6 * (0.8 * length) * depth * thickness;
        assertThat(fish.weight(length) / drawn).isBetween(1 / 2.5, 2.5);
    }

    @ParameterizedTest
    @MethodSource("fish")
    void theSmallestGroupIsGivenWhereAFishMayNotLiveAloneOrAsAPairOnly(Row fish) {
        List<String> forms = fish.list("social");
        boolean several = forms.contains("harem") || forms.contains("group");
        assertThat(forms).isNotEmpty();
        assertThat(fish.has("group_least")).isEqualTo(several && !forms.contains("single"));
        if (fish.has("group_least")) {
            assertThat(fish.number("group_least")).isBetween(2.0, 10.0);
        }
    }

    @ParameterizedTest
    @MethodSource("fish")
    void theTankIsLongEnoughToTurnInAndNotSmallerThanItsLengthLetsItBe(Row fish) {
        double length = fish.number("tank_length_least_cm");
        // An eel lies coiled in a hole, a seahorse stands; both count with a part of their length.
        double share = fish.text("shape").equals("eel") ? 1.2 : 3;
        assertThat(length).isGreaterThanOrEqualTo(share * fish.number("usual_length_cm"));
        // Between a shelf 15 cm wide with 20 cm of water and a hall as wide as half its length and a metre deep or
        // more.
        double volume = fish.number("tank_volume_least_l");
        assertThat(volume).isBetween(length * 15 * 20 / 1000, length * Math.max(100, length / 2) * 120 / 1000);
    }

    @ParameterizedTest
    @MethodSource("fish")
    void whatEatsSmallerFishHasAMouthForThem(Row fish) {
        if (fish.list("eats").contains("fish") && !fish.text("shape").equals("eel")) {
            assertThat(fish.number("prey_depth_share")).isGreaterThanOrEqualTo(0.14);
        }
        if (fish.text("diet").equals("piscivore")) {
            assertThat(fish.list("eats")).containsAnyOf("fish", "small_fish");
        }
    }

    @ParameterizedTest
    @MethodSource("fish")
    void aFishThatSleepsInSandIsGivenSand(Row fish) {
        if (fish.text("night").equals("sand") || fish.text("swimming").equals("buries")) {
            assertThat(fish.has("sand_least_cm")).isTrue();
        }
    }
}
