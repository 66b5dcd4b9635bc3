package org.tidewright.husbandry.day;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.tidewright.husbandry.TestPlans;
import org.tidewright.plan.model.Plan;
import org.tidewright.twin.forecast.UsualDay;
import org.tidewright.twin.forecast.UsualDay.Habits;
import org.tidewright.twin.forecast.UsualDay.Lime;

/** What is told of a day, against the carbonate system worked out elsewhere and sums done by hand. */
class DayStudyTest {
    private static final Plan HARBOUR = TestPlans.example("harbour-room");
    private static final UsualDay TWIN = new UsualDay(HARBOUR);

    private static DayStudy study(Habits habits, String... tried) {
        return DayStudy.of(TWIN, HARBOUR, habits, List.of(tried));
    }

    @Test
    void aRoomFullOfPeopleAsksForAWindow() {
        DayStudy study = study(Habits.AS_PLANNED);
        assertThat(study.lead())
                .startsWith(
                        "Open a window in the evening: the room's carbon dioxide, not alkalinity, holds the pH down.");
        assertThat(study.changed()).isNull();
        assertThat(study.cautions()).anySatisfy(caution -> assertThat(caution).contains("heater"));
    }

    @Test
    void theMeterReadsMoreThanTheTotalScale() {
        DayStudy study = study(Habits.AS_PLANNED);
        String lowest = DayWords.ph(study.planned().ph().low() + 0.13);
        assertThat(study.lead()).contains("from " + lowest + " to ");
    }

    @Test
    void oneMoreDegreeHardlyRaisesThePh() {
        DayStudy study = study(Habits.AS_PLANNED);
        // At 25.5 °C and S 35 from 8 to 9 dKH: 8.09 to 8.14 at 420 µatm, 7.78 to 7.82 at 1000.
        for (double gain : study.moreAlkaline()) {
            assertThat(gain).isBetween(0.03, 0.06);
        }
        // 0.05 and 0.04 in the two airs of that table.
        assertThat(study.buffers()).startsWith("Do not chase pH with buffers").containsPattern("by only 0\\.04.0\\.05");
    }

    @Test
    void theSameWaterInFreshAirHasThePhOfTheTable() {
        DayStudy study = study(Habits.AS_PLANNED);
        // 8 dKH at 420 µatm: 8.09, and 425 ppm of dry air are 411 in saturated air; each dKH more 0.045.
        double expected = 8.09 + (study.planned().alkalinity() - 8) * 0.045;
        assertThat(study.fresh()).isCloseTo(expected, within(0.015));
    }

    @Test
    void whatOutdoorsRoomAndTankAddIsAllOfIt() {
        // Thousands are parted by narrow spaces.
        String remark =
                study(Habits.AS_PLANNED).remarks().get(0).replaceAll("(?<=\\d)[\\u00a0\\u202f\\u2009](?=\\d)", "");
        Matcher number = Pattern.compile("\\d+").matcher(remark);
        List<Integer> told = new ArrayList<>();
        while (number.find()) {
            told.add(Integer.parseInt(number.group()));
        }
        assertThat(told).hasSize(4);
        // Each is told to ten, so the sum may be off by twenty.
        assertThat(told.get(1) + told.get(2) + told.get(3)).isCloseTo(told.get(0), within(20));
        // As the plan has it.
        assertThat(told.get(1)).isEqualTo(425);
    }

    @Test
    void aWindowThatHelpsIsToBeOpened() {
        DayStudy study = study(DayStudy.evening(), "a window open from 19:00 to 22:00");
        assertThat(study.changed()).isNotNull();
        assertThat(study.lead())
                .startsWith("Do it: with a window open from 19:00 to 22:00 the lowest reading of the day is ")
                .contains("in place of");
    }

    @Test
    void whatNoProbeShowsIsLeftAlone() {
        DayStudy study = study(new Habits(Lime.AS_PLANNED, 0, 0, 11.0 * 3600, 9.0 * 3600, null), "lights as they are");
        assertThat(study.lead()).startsWith("Leave it as it is").endsWith("A probe cannot tell the two apart.");
    }

    @Test
    void limewaterNeverGoesWithoutItsCaution() {
        DayStudy study = study(new Habits(Lime.AT_NIGHT, 0, 0, null, null, null), "limewater at night");
        assertThat(study.cautions())
                .anySatisfy(caution -> assertThat(caution).contains("caustic").contains("goggles and gloves"));
        assertThat(study(new Habits(Lime.NONE, 0, 0, null, null, null), "bicarbonate")
                        .cautions())
                .noneSatisfy(caution -> assertThat(caution).contains("caustic"));
    }

    @Test
    void anAiryRoomIsLeftAlone() {
        Plan quiet =
                TestPlans.example("window-nano", "  humidity: 45 %\n", "  humidity: 45 %\n  carbon_dioxide: 423 ppm\n");
        DayStudy study = DayStudy.of(new UsualDay(quiet), quiet, Habits.AS_PLANNED, List.of());
        // The room's air is stated to be the outdoors', so no window is proposed.
        assertThat(study.planned().room().mean()).isCloseTo(study.outdoors(), within(5.0));
        assertThat(study.lead()).doesNotContain("window");
        assertThat(study.remarks()).noneSatisfy(remark -> assertThat(remark).contains("lived-in room"));
    }

    @Test
    void aRoomNobodyTellsOfIsOwnedUpTo() {
        Plan silent = TestPlans.example("window-nano");
        DayStudy study = DayStudy.of(new UsualDay(silent), silent, Habits.AS_PLANNED, List.of());
        // Common practice for a lived-in room: 600 ppm of dry air, the air 1.2 % vapour (0.45 of 2.64 kPa).
        assertThat(study.planned().room().mean()).isCloseTo(593, within(5.0));
        assertThat(study.remarks()).anySatisfy(remark -> assertThat(remark).contains("600\u00a0ppm"));
    }

    @Test
    void alkalinityThatWentAnotherWayIsOwnedUpTo() {
        Plan nano = TestPlans.example("window-nano", "per_day: 3 mL/d", "per_day: 0.1 mL/d");
        Habits night = new Habits(Lime.AT_NIGHT, 0, 0, null, null, null);
        DayStudy richer = DayStudy.of(new UsualDay(nano), nano, night, List.of("limewater at night"));
        assertThat(richer.remarks())
                .anySatisfy(remark -> assertThat(remark).contains("part of the rise of pH is that"));
        DayStudy poorer = study(DayStudy.evening(), "a window open from 19:00 to 22:00");
        assertThat(poorer.remarks()).anySatisfy(remark -> assertThat(remark).contains("corals use more of it"));
    }

    @Test
    void timesAreThoseOfAClock() {
        assertThat(DayWords.clock(6.5 * 3600)).isEqualTo("06:30");
        assertThat(DayWords.clock(86_399)).isEqualTo("00:00");
    }
}
