package org.tidewright.husbandry.burden;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.withinPercentage;

import java.util.List;
import java.util.Objects;
import org.junit.jupiter.api.Test;
import org.tidewright.husbandry.TestPlans;
import org.tidewright.plan.model.Feeding;
import org.tidewright.plan.model.Food;
import org.tidewright.plan.model.Inhabitants;
import org.tidewright.plan.model.Inhabitants.GrowthStage;
import org.tidewright.plan.model.Plan;
import org.tidewright.twin.forecast.Variant;

/** Who lives in the nano of the examples with somebody added, a goby of 3 g and two clownfish of 5 g before; and what is fed. */
class JoinedTest {
    private static final Plan NANO = TestPlans.example("window-nano");

    /** Breath of those that are there, in grams to the 0.8: 3^0.8 + 2 · 5^0.8. */
    private static final double BREATH = 9.6562;

    private static double fed(Plan plan) {
        return plan.feeding().stream()
                .mapToDouble(each -> each.mass().in("kg") * each.times().size() * 1e3)
                .sum();
    }

    private static Inhabitants.Fish last(Plan plan) {
        List<Inhabitants.Fish> fish = Objects.requireNonNull(plan.inhabitants()).fish();
        return fish.get(fish.size() - 1);
    }

    /** 10^0.8 = 6.3096 and 100^0.8 = 39.811: of 0.15 g a day they get 0.0980 g and 0.6184 g more, not ten times as much. */
    @Test
    void foodIsSharedOutAsBreathIs() {
        Addition addition = Addition.today(0.010, 1, 0.100);
        assertThat(fed(Joined.young(NANO, addition))).isCloseTo(0.15 * (1 + 6.3096 / BREATH), withinPercentage(0.01));
        assertThat(fed(Joined.grown(NANO, addition))).isCloseTo(0.15 * (1 + 39.811 / BREATH), withinPercentage(0.01));
        assertThat(last(Joined.young(NANO, addition)).stage()).isEqualTo(GrowthStage.GROWING);
        assertThat(last(Joined.grown(NANO, addition)).stage()).isEqualTo(GrowthStage.ADULT);
        assertThat(last(Joined.grown(NANO, addition)).massOfOne()).isEqualTo(0.100);
    }

    @Test
    void foodThatIsSaidComesOnTopAndGrowsWithTheBreath() {
        Addition addition = new Addition(0.010, 1, 0.100, 0.2e-3, 0);
        assertThat(fed(Joined.young(NANO, addition))).isCloseTo(0.35, withinPercentage(1e-6));
        assertThat(fed(Joined.grown(NANO, addition))).isCloseTo(0.15 + 0.2 * 6.3096, withinPercentage(0.01));
        Addition nothing = new Addition(0.010, 1, 0.100, 0.0, 0);
        assertThat(Joined.young(NANO, nothing).feeding()).isEqualTo(NANO.feeding());
    }

    /** Dry food of 2 % of live mass a day, common practice. */
    @Test
    void theFirstFishAreFedByCustom() {
        Plan empty = Joined.resident(Variant.of(NANO).living(null, List.of()).plan());
        assertThat(empty.inhabitants()).isNotNull();
        Plan young = Joined.young(empty, Addition.today(0.010, 3, 0.100));
        assertThat(fed(young)).isCloseTo(0.6, withinPercentage(1e-6));
        assertThat(young.feeding()).extracting(Feeding::food).containsExactly(Food.DRY_PELLET);
        assertThat(fed(Joined.grown(empty, Addition.today(0.010, 3, 0.100))))
                .isCloseTo(0.6 * 6.3096, withinPercentage(0.01));
    }

    @Test
    void withoutSomeThereIsLessOfAllAndOfTheirFood() {
        Plan half = Joined.share(NANO, 0.5);
        assertThat(Joined.mass(half)).isCloseTo(0.0065, withinPercentage(1e-6));
        assertThat(fed(half)).isCloseTo(0.075, withinPercentage(1e-6));
        Plan none = Joined.share(NANO, 0);
        assertThat(Joined.mass(none)).isZero();
        assertThat(none.feeding()).isEmpty();
        assertThat(Objects.requireNonNull(none.inhabitants()).coralTissue()).isNotNull();
    }
}
