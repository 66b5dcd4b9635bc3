package org.tidewright.web.page;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.tidewright.plan.Examples;
import org.tidewright.plan.model.Plan;
import org.tidewright.plan.model.UnitSystem;
import org.tidewright.plan.text.PlanReading;
import org.tidewright.plan.text.PlanText;
import org.tidewright.twin.forecast.NewTank.Seed;
import org.tidewright.twin.forecast.UsualDay;
import org.tidewright.twin.forecast.UsualDay.Habits;
import org.tidewright.twin.forecast.UsualDay.Lime;

/** The forms of the new tank and of the day. */
class StudyFormsTest {
    private static final double HOUR = 3600;
    private static final Plan HARBOUR = plan("harbour-room");
    private static final Plan NANO = plan("window-nano");
    private static final UsualDay HARBOUR_DAY = new UsualDay(HARBOUR);

    private static Plan plan(String name) {
        return ((PlanReading.Sound) PlanText.read(Examples.text(name))).plan();
    }

    private static NewTankForm tank(Map<String, String> query, UnitSystem units) {
        return NewTankForm.read(query::get, HARBOUR, units);
    }

    private static DayForm day(Map<String, String> query) {
        return DayForm.read(query::get, HARBOUR, HARBOUR_DAY);
    }

    @Test
    void withoutAQueryTheTankIsThePlans() {
        NewTankForm form = tank(Map.of(), UnitSystem.METRIC);
        assertThat(form.order().seed()).isEqualTo(Seed.RIPE);
        assertThat(form.order().withFish()).isFalse();
        assertThat(form.order().fish()).isEqualTo(4);
        assertThat(form.temperature().text()).isEqualTo("25.5");
        assertThat(form.mass().text()).isEqualTo("17");
    }

    @Test
    void fahrenheitAndGramsAreReadAsSuch() {
        NewTankForm form = tank(
                Map.of("temperature_f", "77", "mass_g", "25", "fish", "2", "seed", "none", "test", "2"), UnitSystem.US);
        assertThat(form.order().temperature()).isCloseTo(25, within(1e-9));
        assertThat(form.order().massOfOne()).isCloseTo(0.025, within(1e-12));
        assertThat(form.order().fish()).isEqualTo(2);
        assertThat(form.order().seed()).isEqualTo(Seed.NONE);
        assertThat(form.order().testDose()).isEqualTo(2);
    }

    @Test
    void whatCannotBeIsShownAsTypedAndExplained() {
        NewTankForm form = tank(
                Map.of("temperature_c", "60", "fish", "2.5", "mass_g", "heavy", "seed", "gold"), UnitSystem.METRIC);
        assertThat(form.temperature().text()).isEqualTo("60");
        assertThat(form.temperature().fault()).isEqualTo("from 18 to 31; reckoned with 25.5");
        assertThat(form.fish().fault()).startsWith("a whole number from 1 to 8");
        assertThat(form.mass().fault()).isNotNull();
        assertThat(form.mass().text()).isEmpty();
        assertThat(form.order()).isEqualTo(tank(Map.of(), UnitSystem.METRIC).order());
    }

    @Test
    void aFirstFishNeedsNoTestDose() {
        assertThat(tank(Map.of("begin", "fish"), UnitSystem.METRIC).test()).isNull();
    }

    @Test
    void withoutAQueryTheDayIsThePlans() {
        DayForm form = day(Map.of());
        assertThat(form.tried()).isEmpty();
        assertThat(form.habits()).isEqualTo(Habits.AS_PLANNED);
        assertThat(form.start()).isEqualTo("11:00");
    }

    @Test
    void aFormSentUnchangedTriesNothing() {
        DayForm form = day(Map.of(
                "window", "shut", "lime", "planned", "algae", "planned", "lights_start", "11:00", "lights_hours", "9"));
        assertThat(form.tried()).isEmpty();
        assertThat(form.habits()).isEqualTo(Habits.AS_PLANNED);
    }

    @Test
    void everyHabitIsReadAndNamed() {
        DayForm form = day(Map.of(
                "window", "evening", "lime", "none", "algae", "day", "lights_start", "08:30", "lights_hours", "10"));
        assertThat(form.tried())
                .containsExactly(
                        "a window open from 19:00 to 22:00",
                        "bicarbonate in place of limewater",
                        "lights from 08:30 for 10 hours",
                        "the algae's lamp by day");
        // The lights' middle is at 15:30, the lamp burns 12 hours around it: from 9:30.
        assertThat(form.habits())
                .isEqualTo(new Habits(Lime.NONE, 19 * HOUR, 3 * HOUR, 8.5 * HOUR, 10 * HOUR, 9.5 * HOUR));
    }

    @Test
    void aClockThatIsNoneIsExplained() {
        DayForm form = day(Map.of("lights_start", "25:00", "lights_hours", "30"));
        assertThat(form.startFault()).isEqualTo("a time such as 09:30; reckoned with 11:00");
        assertThat(form.hours())
                .isNotNull()
                .satisfies(hours -> assertThat(hours.fault()).isEqualTo("from 0 to 24; reckoned with 9"));
        assertThat(form.habits()).isEqualTo(Habits.AS_PLANNED);
    }

    @Test
    void aPlanWithoutLimewaterOrAlgaeIsNotAskedAboutThem() {
        DayForm form = DayForm.read(name -> null, NANO, new UsualDay(NANO));
        assertThat(form.algae()).isNull();
        assertThat(form.lime().options()).extracting(Choice.Option::value).containsExactly("planned", "night");
    }

    @Test
    void aChoiceThatIsNotOfferedIsNamedAndThePlansIsReckonedWith() {
        Choice window = Choice.read(
                Map.of("window", "foo")::get,
                "window",
                "Window of the room",
                "shut",
                List.of("shut", "as planned", "always", "open all day"));
        assertThat(window.chosen()).isEqualTo("shut");
        assertThat(window.fault()).isEqualTo("“foo” is none of shut, always; reckoned with as planned");
        for (String fits : List.of("shut", "always", "")) {
            assertThat(Choice.read(
                                    Map.of("window", fits)::get,
                                    "window",
                                    "Window of the room",
                                    "shut",
                                    List.of("shut", "as planned", "always", "open all day"))
                            .fault())
                    .isNull();
        }
    }
}
