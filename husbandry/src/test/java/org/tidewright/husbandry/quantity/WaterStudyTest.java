package org.tidewright.husbandry.quantity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.time.Instant;
import java.time.OffsetDateTime;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.UUID;
import org.junit.jupiter.api.Test;
import org.tidewright.husbandry.TestPlans;
import org.tidewright.husbandry.dosing.DoseAdvice;
import org.tidewright.husbandry.journal.Event;
import org.tidewright.husbandry.journal.Line;
import org.tidewright.husbandry.note.NoteWords;
import org.tidewright.plan.method.WaterQuantity;
import org.tidewright.plan.model.Plan;
import org.tidewright.plan.model.UnitSystem;

/** Invented logs of the harbour room, whose plan doses 0.93 dKH a day in all and holds alkalinity from 7.4 to 8.6 dKH. */
class WaterStudyTest {
    private static final Plan PLAN = TestPlans.example("harbour-room");
    private static final OffsetDateTime FIRST = OffsetDateTime.parse("2026-01-05T08:00:00+01:00");
    private static final double DEGREE = WaterQuantity.ALKALINITY.units().get(0).toHeld(1);

    private final List<Line> lines = new ArrayList<>();

    private void write(double day, Event event) {
        OffsetDateTime at = FIRST.plusMinutes(Math.round(day * 1440));
        lines.add(new Line(UUID.randomUUID(), 1, at, event, "", false, at.toInstant()));
    }

    private void alkalinity(double day, double degrees) {
        write(
                day,
                new Event.Reading(
                        WaterQuantity.ALKALINITY,
                        degrees,
                        WaterQuantity.ALKALINITY.units().get(0),
                        "endpoint_titration"));
    }

    private QuantityStudy study(double day) {
        return water(day).of(WaterQuantity.ALKALINITY).orElseThrow();
    }

    private WaterStudy water(double day) {
        Instant now = FIRST.plusMinutes(Math.round(day * 1440)).toInstant();
        return WaterStudy.of(PLAN, lines, now, ZoneId.of("Europe/Berlin"));
    }

    private static String lead(QuantityStudy study) {
        return study.advice().lead().text(UnitSystem.METRIC);
    }

    @Test
    void aLevelThatStaysIsLeftAlone() {
        for (int day = 0; day <= 56; day += 4) {
            alkalinity(day, day % 8 == 0 ? 8.0 : 8.1);
        }
        QuantityStudy study = study(56.2);
        assertThat(study.decision()).isInstanceOf(DoseAdvice.Leave.class);
        assertThat(lead(study)).startsWith("Leave the dose of bicarbonate alone: by the next test, on Friday 6 March,");
        assertThat(study.call()).isEqualTo(QuantityStudy.Call.NONE);
        assertThat(study.move()).isNull();
        assertThat(study.now().value() / DEGREE).isCloseTo(8.05, within(0.15));
        // What stays while 0.93 dKH a day is dosed is used.
        assertThat(Objects.requireNonNull(study.use()).value() / DEGREE).isCloseTo(0.93, within(0.05));
    }

    /** Read at 8:00 after a night's doses and asked at 20:00 after a day's light: the curve stays with the readings. */
    @Test
    void theCurveLiesWhereTheReadingsDoAtWhateverHourItIsAsked() {
        for (int day = 0; day <= 56; day += 4) {
            alkalinity(day, 8.0);
        }
        QuantityStudy evening = study(56.5);
        assertThat(evening.now().value() / DEGREE).isLessThan(7.85);
        assertThat(evening.course().past())
                .allSatisfy(point -> assertThat(point.level().value() / DEGREE).isCloseTo(8.0, within(0.08)));
        assertThat(evening.advice().remarks())
                .anySatisfy(remark ->
                        assertThat(remark.text(UnitSystem.METRIC)).startsWith("At this hour alkalinity stands at"));
    }

    @Test
    void aLevelThatFallsOutAsksForMoreOfTheSolutionTheKeeperHas() {
        for (int day = 0; day <= 56; day += 4) {
            alkalinity(day, Math.round((9.1 - 0.025 * day) * 20) / 20.0);
        }
        QuantityStudy study = study(56.2);
        assertThat(study.decision())
                .isInstanceOfSatisfying(
                        DoseAdvice.Move.class, move -> assertThat(move.chance()).isGreaterThan(0.1));
        // It falls by 0.025 dKH a day and is to come back by 0.55 in a fortnight: 0.064 dKH a day more, and 1 mL of the
        // solution lifts 526 L by 0.0051 dKH (0.952 meq): 12 or 13 mL a day.
        assertThat(lead(study))
                .matches("Raise bicarbonate from 100\u00a0mL/d to 11[0-6]\u00a0mL/d, and then leave it.*");
        assertThat(NoteWords.of(Objects.requireNonNull(study.move()), UnitSystem.METRIC))
                .matches("set bicarbonate dose 11[0-6] mL/d");
        assertThat(study.advice().cautions()).isNotEmpty();
        assertThat(study.advice().remarks())
                .anySatisfy(
                        remark -> assertThat(remark.text(UnitSystem.METRIC)).startsWith("Move calcium with it, from"));
    }

    @Test
    void aMovedDoseSettlesUntilADateThatIsTold() {
        for (int day = 0; day <= 56; day += 4) {
            alkalinity(day, 8.0);
        }
        write(56.5, new Event.LeverMoved("bicarbonate dose", "m^3/s", 60e-6 / 86_400, 100e-6 / 86_400));
        alkalinity(58, 8.1);
        QuantityStudy study = study(58.2);
        assertThat(Objects.requireNonNull(study.settling()).until())
                .isAfter(FIRST.plusDays(58).toInstant());
        assertThat(lead(study))
                .startsWith("Leave the dose of bicarbonate alone until ")
                .contains("You raised it on Monday 2 March");
        assertThat(study.call()).isEqualTo(QuantityStudy.Call.LEAVE);
    }

    @Test
    void aMoveOfWhatSettlesIsTooEarlyAndAnyOtherMoveIsNot() {
        for (int day = 0; day <= 56; day += 4) {
            alkalinity(day, 8.0);
        }
        write(56.5, moved("bicarbonate dose"));
        alkalinity(58, 8.1);
        WaterStudy water = water(58.2);
        ZoneId zone = ZoneId.of("Europe/Berlin");
        assertThat(EarlyMove.reason(water, moved("bicarbonate dose"), zone).orElseThrow())
                .startsWith("Leave the bicarbonate dose alone until ")
                .contains("it was moved on Monday 2 March", "your tests of alkalinity");
        assertThat(EarlyMove.reason(water, moved("lights"), zone)).isEmpty();
        assertThat(EarlyMove.reason(water, new Event.Fed("pellets", 2e-3), zone))
                .isEmpty();
        assertThat(EarlyMove.reason(water(100), moved("bicarbonate dose"), zone))
                .isEmpty();
    }

    private static Event moved(String lever) {
        return new Event.LeverMoved(lever, "m^3/s", 60e-6 / 86_400, 100e-6 / 86_400);
    }

    @Test
    void aSlipIsSetAsideAndTheKeeperIsAskedToTestAgain() {
        for (int day = 0; day <= 56; day += 4) {
            alkalinity(day, 8.0);
        }
        alkalinity(58, 9.6);
        QuantityStudy study = study(58.2);
        assertThat(study.call()).isEqualTo(QuantityStudy.Call.HANDS);
        assertThat(lead(study)).startsWith("Test alkalinity again before you act");
        assertThat(study.now().value() / DEGREE).isCloseTo(8.0, within(0.15));
        assertThat(study.course()
                        .readings()
                        .get(study.course().readings().size() - 1)
                        .setAside())
                .isTrue();
    }

    @Test
    void aLowLevelIsBroughtBackNoFasterThanIsComfortable() {
        for (int day = 0; day <= 56; day += 4) {
            alkalinity(day, 6.6);
        }
        QuantityStudy study = study(56.2);
        assertThat(study.decision()).isInstanceOfSatisfying(DoseAdvice.Correct.class, correct -> {
            // 8.0 is kept over the day, and at 8:00, after a night's doses, the level stands 0.1 or 0.2 above its day:
            // 1.5 or
            // 1.6 dKH at 0.3 dKH a day, common practice for stony corals of small polyps.
            assertThat(correct.lift() / DEGREE).isCloseTo(1.55, within(0.1));
            assertThat(correct.days()).isEqualTo(6);
        });
        assertThat(lead(study)).startsWith("Bring alkalinity back first: ");
    }

    @Test
    void aLogThatNobodyWroteForLongAsksForATestAndForNoDose() {
        for (int day = 0; day <= 56; day += 4) {
            alkalinity(day, 8.0);
        }
        QuantityStudy study = study(216);
        assertThat(study.call()).isEqualTo(QuantityStudy.Call.TEST);
        assertThat(lead(study)).startsWith("Test alkalinity today: the last test is 160 days old");
    }

    @Test
    void aPhThatMayAsWellLieInItsRangeIsNoReasonToAct() {
        for (int day = 0; day <= 56; day += 4) {
            write(
                    day,
                    new Event.Reading(
                            WaterQuantity.PH, 7.98, WaterQuantity.PH.units().get(0), "electrode"));
        }
        QuantityStudy study = water(56.2).of(WaterQuantity.PH).orElseThrow();
        assertThat(study.call()).isEqualTo(QuantityStudy.Call.NONE);
        assertThat(lead(study)).startsWith("Test pH again by ");
    }

    @Test
    void aPhThatIsToldToBeLowSendsToTheRoomsAir() {
        for (int day = 0; day <= 56; day += 4) {
            write(
                    day,
                    new Event.Reading(
                            WaterQuantity.PH, 7.6, WaterQuantity.PH.units().get(0), "electrode"));
        }
        QuantityStudy study = water(56.2).of(WaterQuantity.PH).orElseThrow();
        assertThat(study.call()).isEqualTo(QuantityStudy.Call.DECIDE);
        assertThat(lead(study)).startsWith("Look at the room's air before you touch the pH");
    }

    @Test
    void aLogWithoutReadingsHasNoStudy() {
        write(1, new Event.Fed("pellets", 2e-3));
        assertThat(WaterStudy.of(PLAN, lines, FIRST.plusDays(2).toInstant(), ZoneId.of("UTC"))
                        .quantities())
                .isEmpty();
    }
}
