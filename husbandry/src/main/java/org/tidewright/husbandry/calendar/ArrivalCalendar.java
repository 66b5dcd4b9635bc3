package org.tidewright.husbandry.calendar;

import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.tidewright.husbandry.arrival.Arrival;
import org.tidewright.husbandry.arrival.Arrival.Stage;
import org.tidewright.husbandry.arrival.QuarantineTank;
import org.tidewright.husbandry.wishlist.ArrivalAnswer;

/** The days of a plan of arrivals: who comes, who goes into the display, until when a tank stands dry. */
public final class ArrivalCalendar {
    private static final String NO_PROMISE =
            "Only if all are well, and a test shows no ammonia and no nitrite in the display.";

    private final String system;
    private final ArrivalAnswer answer;
    private final String display;

    private ArrivalCalendar(String system, ArrivalAnswer answer) {
        this.system = system;
        this.answer = answer;
        display = answer.study().household().plan().name();
    }

    /**
     * The calendar of what is yet to come.
     *
     * @param system id of the system, part of every entry's id
     */
    public static String text(String system, ArrivalAnswer answer, Instant written) {
        ArrivalCalendar calendar = new ArrivalCalendar(system, answer);
        return CalendarFile.text("Arrivals, " + calendar.display, calendar.entries(), written);
    }

    private List<DayEntry> entries() {
        List<DayEntry> entries = new ArrayList<>();
        Map<String, DayEntry> dry = new LinkedHashMap<>();
        for (ArrivalAnswer.Coming coming : answer.coming()) {
            Arrival arrival = coming.arrival();
            String who = coming.animals().words();
            String where = arrival.tank() == null ? display : arrival.tank();
            if (arrival.stage() == Stage.PLANNED) {
                entries.add(DayEntry.on(
                        id(arrival.id(), "comes"), arrival.in(), "Buy " + who + ", into " + where, why(coming)));
            }
            if (arrival.stage() != Stage.IN_DISPLAY && arrival.tank() != null) {
                entries.add(DayEntry.on(
                        id(arrival.id(), "enters"), arrival.out(), capital(who) + " into " + display, NO_PROMISE));
                // Who leaves together leaves the tank dry together: one entry.
                dry(arrival).ifPresent(entry -> dry.putIfAbsent(arrival.tank() + " " + arrival.out(), entry));
            }
        }
        entries.addAll(dry.values());
        return entries;
    }

    private Optional<DayEntry> dry(Arrival arrival) {
        return answer.study().plan().request().tanks().stream()
                .filter(tank -> tank.name().equals(arrival.tank()) && tank.dryDays() > 0)
                .findFirst()
                .map(tank -> dry(arrival, tank));
    }

    private DayEntry dry(Arrival arrival, QuarantineTank tank) {
        LocalDate until = arrival.out().plusDays(tank.dryDays());
        return new DayEntry(
                id(arrival.id(), "dry"),
                arrival.out(),
                until,
                tank.name() + " stands dry",
                "Wash and dry it once it is empty; the next may come from " + until + " on.");
    }

    private String why(ArrivalAnswer.Coming coming) {
        return String.join(
                " ",
                coming.why().stream()
                        .map(sentence -> sentence.withoutSources()
                                .text(answer.study().household().plan().units()))
                        .toList());
    }

    private String id(String wish, String what) {
        return system + "-" + wish.replace(' ', '-') + "-" + what;
    }

    private static String capital(String words) {
        return words.substring(0, 1).toUpperCase(Locale.ROOT) + words.substring(1);
    }
}
