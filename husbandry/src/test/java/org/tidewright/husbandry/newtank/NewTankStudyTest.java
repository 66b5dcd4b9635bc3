package org.tidewright.husbandry.newtank;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Objects;
import org.junit.jupiter.api.Test;
import org.tidewright.husbandry.TestPlans;
import org.tidewright.plan.model.Plan;
import org.tidewright.twin.forecast.NewTank.Seed;

/** What the keeper of a new tank is told, against the days of common practice and hand-worked ammonia. */
class NewTankStudyTest {
    private static final Plan GALLONS = TestPlans.example("fifty-five-gallon");

    private static NewTankOrder order(Seed seed, boolean withFish, double testDose) {
        return new NewTankOrder(seed, withFish, testDose, 26, 4, 0.015);
    }

    @Test
    void theLeadSaysTheDayOfTheReadyTestAndThatTheFirstClearNitriteIsTooEarly() {
        NewTankStudy study = NewTankStudy.of(GALLONS, order(Seed.NONE, false, 1));
        // Common practice: 4 to 8 weeks without seed at 25 to 27 °C.
        assertThat(study.beginning().ready()).isBetween(28.0, 56.0);
        assertThat(study.lead())
                .startsWith("Add the first animals on day\u00a0"
                        + (int) study.beginning().ready() + ", not before")
                .contains("1\u00a0mg/L")
                .endsWith("and that is too early.");
        assertThat(study.quick()).isLessThan(study.beginning().ready());
        assertThat(study.slow()).isGreaterThan(study.beginning().ready());
        assertThat(study.range()).contains("not the calendar");
    }

    @Test
    void milestonesComeInTheOrderOfNitrification() {
        NewTankStudy study = NewTankStudy.of(GALLONS, order(Seed.NONE, false, 1));
        assertThat(study.milestones()).hasSize(4);
        double before = 0;
        for (NewTankStudy.Milestone milestone : study.milestones()) {
            assertThat(milestone.day()).as(milestone.words()).isGreaterThan(before);
            assertThat(milestone.beside()).as("seeded: %s", milestone.words()).isLessThan(milestone.day());
            before = milestone.words().startsWith("Ammonia") ? 0 : milestone.day();
        }
    }

    @Test
    void theDoseIsWeighedAndItsAlkalinityGivenBack() {
        NewTankStudy study = NewTankStudy.of(GALLONS, order(Seed.SOME, false, 1));
        // 209 L brought to 2 mg/L: 0.419 g of nitrogen, in 53.49/14.007 times as much ammonium chloride.
        assertThat(study.firstDose()).isCloseTo(1.60e-3, within(0.02e-3));
        assertThat(study.dosing())
                .contains("Dissolve 1.6\u00a0g")
                .contains("0.80\u00a0g for each")
                .contains("bicarbonate");
        assertThat(study.cautions())
                .anySatisfy(caution ->
                        assertThat(caution).contains("without animals").contains("4\u00a0mg/L"))
                .anySatisfy(caution -> assertThat(caution).contains("nitrite reads clear once"));
    }

    @Test
    void aTankThatIsNotReadyInTimeSaysWhyAndWhatWouldHelp() {
        NewTankStudy study =
                NewTankStudy.of(TestPlans.example("harbour-room"), new NewTankOrder(Seed.NONE, false, 2, 22, 4, 0.015));
        assertThat(study.beginning().ready()).isInfinite();
        assertThat(study.lead())
                .startsWith("Add no animal within 60 days")
                .contains("still takes more than a day")
                .endsWith("Test with 1\u00a0mg/L: it is more than the food of most tanks gives in a day.");
    }

    @Test
    void aFirstFishOnBareRockIsAdvisedAgainst() {
        NewTankStudy study = NewTankStudy.of(GALLONS, order(Seed.NONE, true, 1));
        assertThat(study.lead()).startsWith("Do not begin with a fish");
        assertThat(study.dosing()).isEmpty();
        assertThat(study.cautions()).noneSatisfy(caution -> assertThat(caution).contains("Ammonium chloride is"));
    }

    @Test
    void fourAtOnceHarmWhereOneAFortnightDoesNot() {
        NewTankStudy study = NewTankStudy.of(GALLONS, order(Seed.SOME, false, 1));
        Stocking once = Objects.requireNonNull(study.stocking(true, false));
        Stocking staged = Objects.requireNonNull(study.stocking(false, false));
        Stocking ripe = Objects.requireNonNull(study.stocking(true, true));
        // Hand-worked in 200 L: at once 0.040 mg/L of free ammonia, one a fortnight 0.006.
        assertThat(once.verdict()).isEqualTo(Stocking.Verdict.HARM);
        assertThat(staged.freeAmmonia().value()).isLessThan(once.freeAmmonia().value() / 3);
        assertThat(ripe.verdict()).isEqualTo(Stocking.Verdict.CALM);
        assertThat(study.stockingWords()).startsWith("Bring them one a fortnight, not all at once");
    }

    @Test
    void verdictsChangeAtTheirLimits() {
        assertThat(Stocking.verdict(0.0199, 0.49)).isEqualTo(Stocking.Verdict.CALM);
        assertThat(Stocking.verdict(0.02, 0)).isEqualTo(Stocking.Verdict.WATCH);
        assertThat(Stocking.verdict(0, 0.5)).isEqualTo(Stocking.Verdict.WATCH);
        assertThat(Stocking.verdict(0.03, 0)).isEqualTo(Stocking.Verdict.HARM);
    }

    @Test
    void theUsualOrderIsThePlans() {
        NewTankOrder harbour = NewTankOrder.usual(TestPlans.example("harbour-room"));
        // 95 + 2 × 14 + 22 + 5 × 6 + 2 × 5 g are 185 g of 11 fish.
        assertThat(harbour.massOfOne()).isCloseTo(0.017, within(1e-9));
        assertThat(harbour.fish()).isEqualTo(4);
        assertThat(harbour.seed()).isEqualTo(Seed.RIPE);
        assertThat(harbour.temperature()).isEqualTo(25.5);
        assertThat(NewTankOrder.usual(TestPlans.example("window-nano")).fish()).isEqualTo(3);
    }
}
