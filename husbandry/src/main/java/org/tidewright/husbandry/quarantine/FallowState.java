package org.tidewright.husbandry.quarantine;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import org.tidewright.husbandry.journal.Event;
import org.tidewright.husbandry.journal.Event.Turn;
import org.tidewright.husbandry.journal.Line;
import org.tidewright.husbandry.journal.Parasite;
import org.tidewright.seawater.unit.Unit;

/**
 * A display that stands without fish, as its log tells.
 *
 * @param began day the last fish left
 * @param breaks days on which the count began anew, in order
 */
public record FallowState(Parasite parasite, LocalDate began, List<Break> breaks, FallowSpan span) {

    /** Something came in. */
    public record Break(LocalDate on, String why) {}

    public FallowState {
        breaks = List.copyOf(breaks);
    }

    /**
     * The fallows that are not over by the log, the one that lasts longest first.
     *
     * @param log lines that stand, in the order of time
     * @param temperature of the display
     */
    public static List<FallowState> running(List<Line> log, @Unit("degC") double temperature, LocalDate today) {
        Map<Parasite, Begun> running = new EnumMap<>(Parasite.class);
        for (Line line : log) {
            LocalDate day = line.at().toLocalDate();
            if (day.isAfter(today)) {
                continue;
            }
            if (line.event() instanceof Event.Fallow fallow) {
                turn(running, fallow, day, line.remark());
            } else if (line.event() instanceof Event.AnimalMoved moved && moved.move() == Event.Move.ARRIVED) {
                String why = moved.count() + " " + moved.animal() + " came in";
                running.values().forEach(begun -> begun.breaks.add(new Break(day, why)));
            }
        }
        return running.entrySet().stream()
                .map(entry -> new FallowState(
                        entry.getKey(),
                        entry.getValue().on,
                        entry.getValue().breaks,
                        FallowSpan.of(entry.getKey(), temperature)))
                .sorted((a, b) -> b.restock().compareTo(a.restock()))
                .toList();
    }

    private static void turn(Map<Parasite, Begun> running, Event.Fallow fallow, LocalDate day, String remark) {
        Begun begun = running.get(fallow.parasite());
        if (fallow.turn() == Turn.ENDED) {
            running.remove(fallow.parasite());
        } else if (begun == null) {
            // A fallow that is said to be broken is one that had begun: its first day is not known before that.
            running.put(fallow.parasite(), new Begun(day));
        } else {
            String why = remark.isBlank() ? fallow.turn() == Turn.BEGAN ? "begun anew" : "something came in" : remark;
            begun.breaks.add(new Break(day, why));
        }
    }

    private static final class Begun {
        private final LocalDate on;
        private final List<Break> breaks = new ArrayList<>();

        Begun(LocalDate on) {
            this.on = on;
        }
    }

    /** The day from which days are counted. */
    public LocalDate countedFrom() {
        return breaks.isEmpty() ? began : breaks.get(breaks.size() - 1).on();
    }

    /** The first day for fish, by what careful keepers wait. */
    public LocalDate restock() {
        return countedFrom().plusDays((long) span.customary());
    }

    /** The same by the published stages of its life alone. */
    public LocalDate earliest() {
        return countedFrom().plusDays((long) span.shortest());
    }

    /** Which day of the count a day is, 1 for the first. */
    public @Unit("d") int dayOf(LocalDate day) {
        return (int) ChronoUnit.DAYS.between(countedFrom(), day) + 1;
    }

    public boolean isOver(LocalDate today) {
        return !today.isBefore(restock());
    }
}
