package org.tidewright.twin.contract;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.time.LocalDateTime;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.tidewright.twin.run.Accuracy;
import org.tidewright.twin.run.Network;
import org.tidewright.twin.run.Occurrence;
import org.tidewright.twin.run.Run;
import org.tidewright.twin.run.State;

/** The times of routines against the calendar of the JDK, which has no summer time in it either. */
class RoutineTest {
    private static final double DAY = 86_400;
    private static final LocalDateTime MIDNIGHT = LocalDateTime.of(2027, 1, 1, 0, 0);

    private static Run run(Network.Builder builder) {
        builder.body("water");
        Network network = builder.build();
        return new Run(network, network.usualParameters(), new State(network), Accuracy.OF_A_YEAR);
    }

    private static Network.Builder builder() {
        return new Network.Builder(Layout.OF_WATER_AND_HEAT, 1023, 3990);
    }

    @Test
    void aYearOfMealsFallsOnTheSameMinuteOfEveryDay() {
        Run run = run(builder().add(new Routine("meal", Routine.daily(8.5 * 3600, 1), (now, switches) -> {})));
        run.until(365 * DAY);
        assertThat(run.log()).hasSize(365);
        LocalDateTime due = MIDNIGHT.plusHours(8).plusMinutes(30);
        for (Occurrence meal : run.log()) {
            assertThat(meal.time())
                    .isEqualTo((double) Duration.between(MIDNIGHT, due).toSeconds());
            due = due.plusDays(1);
        }
    }

    @Test
    void everyThirdDayBeginsWithTheFirstAndKeepsItsHour() {
        Run run = run(builder().add(new Routine("change", Routine.daily(10 * 3600, 3), (now, switches) -> {})));
        run.until(10 * DAY);
        assertThat(run.log().stream().map(Occurrence::time))
                .containsExactly(10 * 3600.0, 3 * DAY + 36_000, 6 * DAY + 36_000, 9 * DAY + 36_000);
    }

    /** Next comes strictly after: asked at the very time, it tells the one after. */
    @Test
    void theNextTimeLiesAfterTheOneAskedFor() {
        double[] hours = {0, 1, 7.25, 12, 23.75};
        View now = run(builder()).now();
        for (double hour : hours) {
            for (int days = 1; days <= 14; days++) {
                Routine.Next next = Routine.daily(hour * 3600, days);
                double time = hour * 3600;
                for (int i = 0; i < 1000; i++) {
                    double after = next.after(time, now);
                    assertThat(after).isEqualTo(time + days * DAY);
                    assertThat(next.after(Math.nextDown(after), now)).isEqualTo(after);
                    time = after;
                }
            }
        }
    }

    @Test
    void ofTwoThatAreDueInOneSecondTheOneDeclaredFirstGoesFirst() {
        Network.Builder builder = builder();
        for (String name : List.of("old water out", "new water in", "fish fed")) {
            builder.add(new Routine(name, Routine.daily(3600, 1), (now, switches) -> {}));
        }
        Run run = run(builder);
        run.until(DAY);
        assertThat(run.log().stream().map(Occurrence::event))
                .containsExactly("old water out", "new water in", "fish fed");
    }

    /** A day holds 144 times ten minutes; the longest step of a run is two hours. */
    @Test
    void onlyACloseRunStopsWhereARateBendsWithoutAJump() {
        Routine.Next tenMinutes = (time, now) -> (Math.floor(time / 600) + 1) * 600;
        Accuracy close = new Accuracy(1e-6, 1e-7, 1e-3, 1e-4, 7200);
        assertThat(stepsOfADay(Routine.bend("bend", tenMinutes), close)).isGreaterThanOrEqualTo(144);
        assertThat(stepsOfADay(Routine.bend("bend", tenMinutes), Accuracy.OF_A_YEAR))
                .isLessThan(30);
        assertThat(stepsOfADay(Routine.quiet("jump", tenMinutes), Accuracy.OF_A_YEAR))
                .isGreaterThanOrEqualTo(144);
    }

    private static long stepsOfADay(Routine routine, Accuracy accuracy) {
        Network.Builder builder = builder().add(routine);
        builder.body("water");
        Network network = builder.build();
        Run run = new Run(network, network.usualParameters(), new State(network), accuracy);
        run.until(DAY);
        return run.effort().steps();
    }

    /** A run cut into pieces, one of them ending at the very time, does each routine once. */
    @Test
    void whatIsDueAsAPieceOfTheRunEndsHappensOnceWhenItGoesOn() {
        Run run = run(builder().add(new Routine("meal", Routine.daily(3600, 1), (now, switches) -> {})));
        run.until(3600);
        run.until(3600);
        run.until(3601);
        run.until(DAY);
        assertThat(run.log()).hasSize(1);
    }
}
