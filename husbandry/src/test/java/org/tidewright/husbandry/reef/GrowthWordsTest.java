package org.tidewright.husbandry.reef;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.tidewright.husbandry.TestPlans;
import org.tidewright.husbandry.advice.Advice;
import org.tidewright.husbandry.advice.Source;
import org.tidewright.plan.model.Plan;
import org.tidewright.plan.model.UnitSystem;
import org.tidewright.plan.source.Basis;

class GrowthWordsTest {
    private static final double VOLUME = 0.495;

    private static GrowthWords words(Plan plan) {
        return new GrowthWords(plan, Growth.asStated(plan, CoralLore.BY_FORM, VOLUME), VOLUME);
    }

    private static String lead(Plan plan) {
        return words(plan).advice().lead().text(UnitSystem.METRIC).replace('\u00a0', ' ');
    }

    @Test
    void theActIsTheDoseToBeReadyFor() {
        String lead = lead(TestPlans.example("harbour-room"));
        assertThat(lead)
                .startsWith("Be ready to dose ")
                .contains(" of bicarbonate instead of 100 mL/d and ", " of calcium instead of 100 mL/d in half a year:")
                .contains("skeletons take 1.0 dKH/d (0.7–1.3) now");
    }

    @Test
    void whereNothingGrowsNotablyDosesAreLeft() {
        Plan slow = ReefPlans.plan(
                "", "", "inhabitants:\n  corals:\n    - {name: brain coral, plan_area: 300 cm², form: favites}\n");
        assertThat(lead(slow)).startsWith("Leave doses as they are for half a year: skeletons take ");
        Plan soft = ReefPlans.plan(
                "", "", "inhabitants:\n  corals:\n    - {name: leathers, plan_area: 300 cm², form: soft}\n");
        assertThat(lead(soft)).startsWith("Nothing to prepare");
        assertThat(words(soft).rows().get(3).alkalinity().value()).isZero();
    }

    @Test
    void withoutASolutionInThePlanTheWaterIsSpokenOf() {
        Plan plan = ReefPlans.plan(
                "",
                "",
                "inhabitants:\n  corals:\n    - {name: staghorn, plan_area: 30 cm², form: branching_acropora}\n");
        assertThat(lead(plan)).startsWith("Be ready to bring more alkalinity and calcium within half a year:");
        assertThat(words(plan).advice().sources())
                .extracting(Source::basis)
                .contains(Basis.PUBLISHED, Basis.COMMON_PRACTICE);
    }

    @Test
    void rowsReachFromNowToFiveYears() {
        List<GrowthWords.Row> rows = words(TestPlans.example("harbour-room")).rows();
        assertThat(rows)
                .extracting(GrowthWords.Row::when)
                .containsExactly("now", "in 3 months", "in 6 months", "in a year", "in 3 years", "in 5 years");
        assertThat(rows.get(0).doses()).isEmpty();
        assertThat(rows.get(3).doses()).hasSize(2);
        for (int i = 1; i < rows.size(); i++) {
            assertThat(rows.get(i).alkalinity().value())
                    .isGreaterThan(rows.get(i - 1).alkalinity().value());
        }
    }

    @Test
    void aUseTheAreasCannotExplainIsSaid() {
        Plan plan = TestPlans.example(
                "harbour-room", "alkalinity_use: 1.0 dKH/d ± 0.2 dKH/d", "alkalinity_use: 4.0 dKH/d ± 0.2 dKH/d");
        Advice advice = words(plan).advice();
        assertThat(advice.remarks().get(0).text(UnitSystem.METRIC))
                .startsWith("Look at the areas in the plan before you trust this")
                .contains("lime on a heater");
    }
}
