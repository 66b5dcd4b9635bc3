package org.tidewright.husbandry.quarantine;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import org.junit.jupiter.api.Test;
import org.tidewright.husbandry.journal.Event;
import org.tidewright.husbandry.journal.Event.Appetite;
import org.tidewright.husbandry.journal.Event.Move;
import org.tidewright.husbandry.journal.Sign;
import org.tidewright.plan.model.Quarantine;
import org.tidewright.plan.quantity.Amount;

/** Ends of a watch, counted by hand on a calendar. */
class WatchTest {
    private static Watch watch(Log log, int days, int today) {
        Quarantine quarantine = new Quarantine("Harbour room", Amount.of(days, "d"), null);
        Batch batch = Batch.newest(log.lines()).orElseThrow();
        return Watch.of(batch, quarantine, Log.day(today));
    }

    private static Log batch() {
        return new Log().came(1, 2, "clownfish");
    }

    @Test
    void thirtyDaysFromTheFirstOfMarchEndOnTheThirtyFirst() {
        Watch watch = watch(batch().well(1, 12), 30, 12);
        assertThat(watch.end()).isEqualTo(LocalDate.parse("2026-03-31"));
        assertThat(watch.dayOf(Log.day(12))).isEqualTo(12);
        assertThat(watch.isOver(Log.day(30))).isFalse();
        assertThat(watch.isOver(Log.day(31))).isTrue();
        assertThat(watch.wasMoved()).isFalse();
    }

    @Test
    void whoComesLaterMakesAllWait() {
        Watch watch = watch(batch().came(11, 1, "goby"), 45, 12);
        assertThat(watch.governing().cause()).isEqualTo(Restart.Cause.LATER_ARRIVAL);
        assertThat(watch.end()).isEqualTo(Log.day(11 + 45));
    }

    @Test
    void aSignBeginsTheCountAnew() {
        Log log = batch().well(1, 9).check(10, "clownfish", Appetite.SOME, 70, Sign.CLOUDY_EYE);
        Watch watch = watch(log, 30, 11);
        assertThat(watch.governing().cause()).isEqualTo(Restart.Cause.SIGN);
        assertThat(watch.governing().why()).isEqualTo("seen: cloudy eye");
        assertThat(watch.end()).isEqualTo(Log.day(40));
        assertThat(watch.dayOf(Log.day(11))).isEqualTo(2);
    }

    @Test
    void aSignNeverShortensALongWatch() {
        Watch watch = watch(batch().check(10, null, Appetite.ALL, null, Sign.HIDING), 76, 11);
        // 10 + 30 is before 1 + 76.
        assertThat(watch.end()).isEqualTo(Log.day(77));
        assertThat(watch.governing().cause()).isEqualTo(Restart.Cause.ARRIVAL);
        assertThat(watch(batch().check(60, null, Appetite.ALL, null, Sign.HIDING), 76, 61)
                        .end())
                .isEqualTo(Log.day(90));
    }

    @Test
    void aShortWatchIsBegunAnewAsShort() {
        assertThat(watch(batch().check(10, null, Appetite.ALL, null, Sign.HIDING), 14, 11)
                        .end())
                .isEqualTo(Log.day(24));
    }

    @Test
    void aHundredBreathsAMinuteCountAsASignAndNinetyNineDoNot() {
        assertThat(watch(batch().check(5, null, Appetite.ALL, 100), 30, 5)
                        .governing()
                        .cause())
                .isEqualTo(Restart.Cause.BREATHS);
        assertThat(watch(batch().check(5, null, Appetite.ALL, 99), 30, 5).wasMoved())
                .isFalse();
    }

    @Test
    void twoFedDaysWithoutEatingCountAsASign() {
        Log once = batch().check(3, null, Appetite.NONE, null).check(4, null, Appetite.SOME, null);
        assertThat(watch(once, 30, 5).wasMoved()).isFalse();
        Log twice = batch().check(3, "goby", Appetite.NONE, null)
                .check(4, "goby", Appetite.NOT_FED, null)
                .check(5, "goby", Appetite.NONE, null);
        Watch watch = watch(twice, 30, 5);
        assertThat(watch.governing().cause()).isEqualTo(Restart.Cause.NOT_EATING);
        assertThat(watch.governing().why()).isEqualTo("goby ate nothing on two days running");
        assertThat(watch.end()).isEqualTo(Log.day(35));
        Log others = batch().check(3, "goby", Appetite.NONE, null).check(4, "clownfish", Appetite.NONE, null);
        assertThat(watch(others, 30, 5).wasMoved()).isFalse();
        Log ateInTheEvening = batch().check(3, null, Appetite.NONE, null)
                .check(4, null, Appetite.NONE, null)
                .check(4, null, Appetite.ALL, null);
        assertThat(watch(ateInTheEvening, 30, 5).wasMoved()).isFalse();
    }

    @Test
    void aDeathAndATreatmentBeginItAnew() {
        assertThat(watch(batch().move(6, 1, "clownfish", Move.DIED), 30, 7)
                        .governing()
                        .cause())
                .isEqualTo(Restart.Cause.DEATH);
        Watch treated = watch(
                batch().write(8, new Event.Treated("an invented medicine", Event.Word.LABEL, 0.04, null), ""), 30, 9);
        assertThat(treated.governing().why()).contains("treated with an invented medicine");
        assertThat(treated.end()).isEqualTo(Log.day(38));
    }

    @Test
    void aDayTellsTheWorstOfItsChecks() {
        Log log = batch().check(2, "a", Appetite.ALL, 60)
                .check(2, "b", Appetite.SOME, 90, Sign.SCRATCHING)
                .check(2, "c", Appetite.NOT_FED, null);
        CheckedDay day = watch(log, 30, 3).days().get(1);
        assertThat(day.appetite()).isEqualTo(Appetite.SOME);
        assertThat(day.breaths()).isEqualTo(90);
        assertThat(day.signs()).containsExactly(Sign.SCRATCHING);
        assertThat(watch(log, 30, 3).days().get(2).checked()).isFalse();
    }
}
