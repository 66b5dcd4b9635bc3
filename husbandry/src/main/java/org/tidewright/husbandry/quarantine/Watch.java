package org.tidewright.husbandry.quarantine;

import static java.util.stream.Collectors.joining;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.tidewright.husbandry.journal.Event;
import org.tidewright.husbandry.journal.Line;
import org.tidewright.husbandry.journal.Sign;
import org.tidewright.plan.model.Quarantine;
import org.tidewright.seawater.unit.Unit;

/**
 * The days a batch is watched. They are counted from the last arrival, and anew from every sign of illness, for as long as
 * the plan says but no longer than {@link #AGAIN} days.
 *
 * @param days every day of the batch so far
 * @param restarts days from which days are counted, in order
 * @param governing the one that ends last
 */
public record Watch(List<CheckedDay> days, List<Restart> restarts, Restart governing) {
    /** Days counted anew from a sign: common practice is 14 to 30, and this is the careful end of it. */
    @Unit("d")
    public static final int AGAIN = 30;

    /** The other end of common practice. */
    @Unit("d")
    public static final int AGAIN_AT_LEAST = 14;

    public Watch {
        days = List.copyOf(days);
        restarts = List.copyOf(restarts);
    }

    /** The watch over a batch as the log tells it, up to a day. */
    public static Watch of(Batch batch, Quarantine quarantine, LocalDate today) {
        List<CheckedDay> days = CheckedDay.of(batch, today);
        List<Restart> restarts = new ArrayList<>();
        arrivals(batch, quarantine.watchDays(), today, restarts);
        int again = Math.min(quarantine.watchDays(), AGAIN);
        days.forEach(day -> restarts(day, again, restarts));
        restarts.sort(Comparator.comparing(Restart::on));
        Restart governing = restarts.stream()
                .reduce((a, b) -> b.until().isBefore(a.until()) ? a : b)
                .orElseThrow();
        return new Watch(days, restarts, governing);
    }

    private static void arrivals(Batch batch, int days, LocalDate today, List<Restart> restarts) {
        for (Line line : batch.lines()) {
            LocalDate day = line.at().toLocalDate();
            if (!day.isAfter(today)
                    && line.event() instanceof Event.AnimalMoved moved
                    && moved.move() == Event.Move.ARRIVED) {
                restarts.add(new Restart(
                        day,
                        day.equals(batch.began()) ? Restart.Cause.ARRIVAL : Restart.Cause.LATER_ARRIVAL,
                        moved.count() + " " + moved.animal() + " came in",
                        days));
            }
        }
    }

    private static void restarts(CheckedDay day, int again, List<Restart> restarts) {
        if (!day.signs().isEmpty()) {
            String signs = day.signs().stream().sorted().map(Sign::words).collect(joining(", "));
            restarts.add(new Restart(day.day(), Restart.Cause.SIGN, "seen: " + signs, again));
        }
        if (day.isBreathless()) {
            restarts.add(new Restart(day.day(), Restart.Cause.BREATHS, day.breaths() + " breaths a minute", again));
        }
        for (String animal : day.fasting()) {
            restarts.add(new Restart(
                    day.day(), Restart.Cause.NOT_EATING, animal + " ate nothing on two days running", again));
        }
        if (day.died() > 0) {
            restarts.add(new Restart(day.day(), Restart.Cause.DEATH, day.died() + " died", again));
        }
        for (String treatment : day.treatments()) {
            restarts.add(new Restart(
                    day.day(), Restart.Cause.TREATMENT, "treated with " + treatment + ", which can hide signs", again));
        }
    }

    /** The first day on which the animals may go to the display. */
    public LocalDate end() {
        return governing.until();
    }

    /** Which day of the count a day is, 1 for the day it began. */
    public @Unit("d") int dayOf(LocalDate day) {
        return (int) ChronoUnit.DAYS.between(governing.on(), day) + 1;
    }

    public boolean isOver(LocalDate today) {
        return !today.isBefore(end());
    }

    /** Whether something moved the end since the first animals came. */
    public boolean wasMoved() {
        return governing.cause() != Restart.Cause.ARRIVAL;
    }
}
