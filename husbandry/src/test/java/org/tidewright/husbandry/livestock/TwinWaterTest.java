package org.tidewright.husbandry.livestock;

import static java.util.Objects.requireNonNull;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.tidewright.husbandry.TestPlans;
import org.tidewright.husbandry.burden.Burden;
import org.tidewright.plan.model.Inhabitants;
import org.tidewright.plan.model.Plan;
import org.tidewright.twin.ensemble.Ensemble;

/** Candidates before the twin of the nano: a goby of 3 g and two clownfish of 5 g. */
class TwinWaterTest {
    private static final LocalDate TODAY = LocalDate.of(2026, 11, 1);
    private static final Plan NANO = TestPlans.example("window-nano");

    private static Community community(List<Animals> residents, List<Community.Arrival> arrivals) {
        return new Community(residents, List.of("goby", "clownfish"), new Experience(List.of(), List.of()), arrivals);
    }

    private static double mass(Plan plan) {
        return requireNonNull(plan.inhabitants()).fish().stream()
                .mapToDouble(each -> each.count() * each.massOfOne())
                .sum();
    }

    @Test
    void fishOfNoKnownSpeciesStayAsThePlanSaysAndThoseOfTheLogJoinThem() {
        Animals gramma = SettingsByHand.animals("Gramma loreto", 2);
        Plan peopled =
                Peopled.of(NANO, community(List.of(gramma), List.of()), TODAY).plan();
        double more = 2 * gramma.fish().mass(gramma.length());
        assertThat(mass(peopled)).isCloseTo(mass(NANO) + more, within(1e-12));
        assertThat(requireNonNull(peopled.inhabitants()).fish())
                .filteredOn(each -> "Gramma loreto".equals(each.species()))
                .singleElement()
                .extracting(Inhabitants.Fish::stage)
                .isEqualTo(Inhabitants.GrowthStage.GROWING);
        assertThat(requireNonNull(peopled.inhabitants()).corals())
                .isEqualTo(requireNonNull(NANO.inhabitants()).corals());
    }

    @Test
    void twoThatComeTogetherWeighMoreThanOneAndCoralsAreNotPutIn() {
        Water water =
                new TwinWater(Peopled.of(NANO, community(List.of(), List.of()), TODAY), Ensemble.Progress.UNWATCHED);
        Animals gramma = SettingsByHand.animals("Gramma loreto", 1);
        Animals royal = SettingsByHand.animals("Pterapogon kauderni", 3);
        Burden alone = water.with(gramma, List.of()).orElseThrow();
        Burden together = water.with(gramma, List.of(royal)).orElseThrow();
        assertThat(together.ammonia().with().middle())
                .isGreaterThan(alone.ammonia().with().middle());
        assertThat(together.grown().nitrate().with().middle())
                .isGreaterThan(alone.grown().nitrate().with().middle());
        assertThat(water.with(SettingsByHand.animals("Discosoma sp.", 1), List.of()))
                .isEmpty();
    }

    @Test
    void whatMayNotComeAnywayIsNotPutIntoTheTwinAndIsNobodysCompany() {
        Setting setting = Setting.of(TODAY, SettingsByHand.HOME, List.of());
        Animals unicorn = SettingsByHand.animals("Naso vlamingii", 1);
        Animals gramma = SettingsByHand.animals("Gramma loreto", 1);
        Water asked = (candidate, coming) -> {
            assertThat(candidate).isEqualTo(gramma);
            assertThat(coming).isEmpty();
            return Optional.empty();
        };
        assertThat(ShoppingList.judge(List.of(unicorn, gramma), setting, asked))
                .extracting(Verdict::call)
                .startsWith(Call.NO);
    }
}
