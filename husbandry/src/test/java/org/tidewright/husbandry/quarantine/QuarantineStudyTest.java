package org.tidewright.husbandry.quarantine;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.tidewright.husbandry.TestPlans;
import org.tidewright.husbandry.advice.Advice;
import org.tidewright.husbandry.journal.Event;
import org.tidewright.husbandry.journal.Event.Appetite;
import org.tidewright.husbandry.journal.Event.Move;
import org.tidewright.husbandry.journal.Sign;
import org.tidewright.husbandry.json.QuarantineJson;
import org.tidewright.plan.model.Plan;
import org.tidewright.plan.model.UnitSystem;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

class QuarantineStudyTest {
    private static final Plan BOX = TestPlans.example("quarantine-box");

    private static QuarantineStudy study(Log log, int today) {
        return QuarantineStudy.of(BOX, log.lines(), Log.day(today));
    }

    private static String duty(Log log, int today) {
        return lead(study(log, today).duty());
    }

    private static String lead(Advice advice) {
        return advice.lead().text(UnitSystem.METRIC);
    }

    private static Log batch() {
        return new Log().came(1, 4, "wrasse");
    }

    @Test
    void beforeAnyoneComesItSaysWhatToWrite() {
        assertThat(duty(new Log(), 1)).startsWith("Nobody is in it yet.");
        assertThat(lead(study(new Log(), 1).end())).contains("no day is counted");
    }

    @Test
    void aDayWithoutALookAsksForOne() {
        assertThat(duty(batch(), 1))
                .startsWith("Look at them today while they eat")
                .contains("Nobody has looked");
        assertThat(duty(batch().well(1, 3), 4)).startsWith("Look at them today").doesNotContain("last look");
        assertThat(duty(batch().well(1, 3), 6)).contains("The last look was 3 days ago");
    }

    @Test
    void aQuietDayIsLeftAlone() {
        assertThat(duty(batch().well(1, 12), 12))
                .isEqualTo("Nothing more today: all was eaten and no sign. Day 12 of 30.");
    }

    @Test
    void fastBreathAsksForAVeterinarianWithinHours() {
        Log log = batch().well(1, 4).check(5, "wrasse", Appetite.SOME, 120, Sign.FAST_BREATHING);
        Advice duty = study(log, 5).duty();
        assertThat(lead(duty))
                .startsWith("Act now: 120 breaths a minute, fast breathing.")
                .contains("veterinarian, within hours", "may be", "no diagnosis");
        assertThat(duty.cautions().get(0)).contains("No dose stands here");
        assertThat(lead(study(log, 5).end()))
                .startsWith("Keep them here until Saturday 4 April")
                .contains("(120 breaths a minute)");
    }

    @Test
    void aSignADeathAndAFastEachHaveTheirWords() {
        assertThat(duty(batch().check(5, null, Appetite.ALL, null, Sign.CLOUDY_EYE), 5))
                .startsWith("Ask a veterinarian, and look again this evening: seen today, cloudy eye.");
        assertThat(duty(batch().move(5, 1, "wrasse", Move.DIED), 5)).startsWith("1 died today.");
        assertThat(duty(batch().check(4, "wrasse", Appetite.NONE, null).check(5, "wrasse", Appetite.NONE, null), 5))
                .startsWith("Offer what it ate where it came from");
    }

    @Test
    void afterTheWatchTheyMayMove() {
        Log log = batch().well(1, 31);
        assertThat(duty(log, 31))
                .isEqualTo(
                        "They may move to Harbour room: 30 days without a sign are over since Tuesday 31" + " March.");
        assertThat(lead(study(log, 31).end()))
                .startsWith("They may go to Harbour room: 30\u00a0days from Sunday 1 March");
        assertThat(duty(batch().well(1, 30), 31)).contains("If all is well they may move to Harbour room.");
    }

    @Test
    void anEmptyTankDriesAndIsThenReady() {
        Log log = batch().well(1, 31).move(31, 4, "wrasse", Move.LEFT);
        assertThat(duty(log, 32)).contains("stand dry until Friday 3 April");
        assertThat(duty(log, 34)).startsWith("It stands ready");
    }

    @Test
    void treatedWaterBringsTheCautionsOfCopperAndOfTests() {
        Log log = batch().write(3, new Event.Treated("an invented medicine", Event.Word.VETERINARIAN, 0.047, null), "")
                .well(4, 4);
        assertThat(study(log, 4).duty().cautions()).contains(Caution.MEDICINE, Caution.COPPER, Caution.BINDER);
        assertThat(study(batch().well(1, 4), 4).duty().cautions()).doesNotContain(Caution.COPPER);
    }

    @Test
    void aPlanThatCountsOthersIsToldSo() {
        Log log = new Log().came(1, 2, "wrasse").well(1, 1);
        assertThat(study(log, 1).duty().remarks())
                .singleElement()
                .satisfies(remark -> assertThat(remark.text(UnitSystem.METRIC))
                        .startsWith("The log has 2 in the tank, the plan counts 4"));
    }

    /** Whatever is said, nothing names an amount of a medicine. */
    @Test
    void noAdviceGivesADose() {
        Log log = batch().write(3, new Event.Treated("copper", Event.Word.LABEL, 0.047, "as it says"), "")
                .check(4, null, Appetite.NONE, 120, Sign.values());
        QuarantineStudy study = study(log, 4);
        for (Advice advice : new Advice[] {study.duty(), study.end()}) {
            String all = lead(advice) + advice.remarks() + advice.cautions();
            assertThat(all).doesNotContain("mg/L", "mL", "ppm", "drops", "tablet");
        }
    }

    @Test
    void jsonSaysTheSame() {
        Log log = batch().well(1, 9).check(10, "wrasse", Appetite.SOME, 70, Sign.CLOUDY_EYE);
        QuarantineStudy study = study(log, 11);
        JsonNode root = JsonMapper.builder()
                .build()
                .readTree(QuarantineJson.text(study, BareTankWater.of(BOX), UnitSystem.METRIC));
        assertThat(root.get("serves").asString()).isEqualTo("Harbour room");
        assertThat(root.get("watch").get("end").asString()).isEqualTo("2026-04-09");
        assertThat(root.get("watch").get("days")).hasSize(11);
        assertThat(root.get("watch").get("restarts").get(1).get("cause").asString())
                .isEqualTo("sign");
        assertThat(root.get("batch").get("present").get(0).get("count").asInt()).isEqualTo(4);
        assertThat(root.get("ammonia")
                        .get("planned")
                        .get("free_ammonia_n_peak_mg_per_l")
                        .asDouble())
                .isBetween(0.001, 0.02);
        assertThat(root.get("duty").get("lead").asString()).isEqualTo(lead(study.duty()));
    }
}
