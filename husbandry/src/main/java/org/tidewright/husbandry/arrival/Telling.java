package org.tidewright.husbandry.arrival;

import java.time.LocalDate;
import java.time.YearMonth;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import org.tidewright.husbandry.arrival.Precedence.Why;
import org.tidewright.husbandry.arrival.Reason.ComesAfter;
import org.tidewright.husbandry.arrival.Reason.Dry;
import org.tidewright.husbandry.arrival.Reason.Earliest;
import org.tidewright.husbandry.arrival.Reason.LongerStay;
import org.tidewright.husbandry.arrival.Reason.NoTank;
import org.tidewright.husbandry.arrival.Reason.Paced;
import org.tidewright.husbandry.arrival.Reason.Prey;
import org.tidewright.husbandry.arrival.Reason.Shared;
import org.tidewright.husbandry.arrival.Reason.TankTaken;
import org.tidewright.husbandry.arrival.Reason.TimidFirst;
import org.tidewright.husbandry.arrival.Reason.TooLate;
import org.tidewright.husbandry.arrival.Reason.TooMuch;
import org.tidewright.husbandry.arrival.search.Broken;
import org.tidewright.husbandry.arrival.search.LastInLine;
import org.tidewright.husbandry.arrival.search.OneDayEarlier;
import org.tidewright.husbandry.arrival.search.Rulebook;
import org.tidewright.husbandry.arrival.search.Schedule;

/** Tells in names and dates what stands in the way of a wish. */
final class Telling {
    private final Translation translation;
    private final Schedule schedule;

    Telling(Translation translation, Schedule schedule) {
        this.translation = translation;
        this.schedule = schedule;
    }

    /** What a placed batch waits for. */
    List<Reason> waits(int batch) {
        Set<Reason> reasons = new LinkedHashSet<>();
        for (Broken each : OneDayEarlier.broken(translation.puzzle, schedule, batch)) {
            for (Reason reason : told(each, schedule.out().get(batch) - 1)) {
                reasons.add(each.batch() == batch ? reason : new Shared(id(each.batch()), reason));
            }
        }
        reasons.removeIf(each -> each instanceof Shared shared && reasons.contains(shared.why()));
        return List.copyOf(reasons);
    }

    /** What stands against a batch that is not placed. */
    List<Reason> against(int batch) {
        Schedule put = LastInLine.put(translation.puzzle, schedule, batch);
        Telling last = new Telling(translation, put);
        Set<Reason> reasons = new LinkedHashSet<>();
        for (Broken each : LastInLine.broken(translation.puzzle, put, batch)) {
            reasons.addAll(
                    each.other() == batch
                            ? tooLateFor(each)
                            : last.told(each, put.out().get(batch)));
        }
        boolean late = reasons.removeIf(TooLate.class::isInstance);
        if (reasons.isEmpty() && late) {
            reasons.add(new TooLate(translation.date(put.out().get(batch))));
        }
        return List.copyOf(reasons);
    }

    /** Somebody is placed before whom it would have had to come. */
    private List<Reason> tooLateFor(Broken broken) {
        String second = id(broken.batch());
        return translation.precedences.stream()
                .filter(each ->
                        each.first().equals(id(broken.other())) && each.second().equals(second))
                .<Reason>map(each -> each.why() == Why.PREY ? new Prey(second) : new TimidFirst(second))
                .toList();
    }

    /** A broken rule, when the batch would go into the display on a day. */
    private List<Reason> told(Broken broken, int out) {
        return switch (broken.rule()) {
            case SHOP -> List.of(shop(broken));
            case DISPLAY -> display(broken, out);
            case FREE -> List.of(new TankTaken(tank(broken), null, translation.date(broken.day())));
            case TAKEN, APART -> List.of(new TankTaken(tank(broken), id(broken.other()), date(broken)));
            case DRY ->
                List.of(
                        new TankTaken(tank(broken), id(broken.other()), date(broken)),
                        new Dry(tank(broken), dry(broken)));
            case ROOM -> List.of(new NoTank(wish(broken.batch()).load()));
            case GAP -> List.of(paced(broken));
            case PACE -> List.of(new TooMuch(limit(broken)));
            case BUDGET -> List.of(new Reason.Budget(YearMonth.from(date(broken))));
            case ORDER -> order(broken, out);
            case NEEDED -> needed(broken);
            case HORIZON -> List.of(new TooLate(translation.date(out)));
            case QUARANTINE ->
                broken.other() == Broken.NOBODY ? List.of() : List.of(new LongerStay(id(broken.other())));
            case START, HAPPENED -> List.of();
        };
    }

    private Reason shop(Broken broken) {
        NotBefore shop = wish(broken.batch()).fromShop();
        return new Earliest(date(broken), shop == null ? "" : shop.reason());
    }

    /** The display's own day, and what is in it already and was to be first. */
    private List<Reason> display(Broken broken, int out) {
        List<Reason> reasons = new ArrayList<>();
        Wish wish = wish(broken.batch());
        NotBefore ready = wish.intoDisplay();
        if (ready != null && translation.day(ready.day()) > out) {
            reasons.add(new Earliest(ready.day(), ready.reason()));
        }
        for (Precedence each : translation.precedences) {
            LocalDate first = translation.request.inDisplay(each.first()).orElse(null);
            if (each.second().equals(wish.id())
                    && first != null
                    && translation.day(first.plusDays(each.days())) > out) {
                reasons.add(first(each, first));
            }
        }
        return reasons;
    }

    /** Told of the second of two; an order holds it up only where its days and the gap of additions reach so far. */
    private List<Reason> order(Broken broken, int out) {
        List<Reason> reasons = new ArrayList<>();
        String first = id(broken.other());
        String second = id(broken.batch());
        int gap = translation.puzzle.gap();
        for (Precedence each : translation.precedences) {
            if (each.first().equals(first)
                    && each.second().equals(second)
                    && broken.day() + Math.max(gap, each.days()) > out) {
                reasons.add(first(each, date(broken)));
            }
        }
        return reasons;
    }

    private Reason first(Precedence precedence, LocalDate day) {
        return switch (precedence.why()) {
            case AFTER -> new ComesAfter(precedence.first(), day, precedence.days());
            case TIMID -> new TimidFirst(precedence.first());
            case PREY -> new Prey(precedence.first());
        };
    }

    private List<Reason> needed(Broken broken) {
        return translation.precedences.stream()
                .filter(each -> each.needed()
                        && each.first().equals(id(broken.other()))
                        && each.second().equals(id(broken.batch())))
                .<Reason>map(each -> new ComesAfter(each.first(), null, each.days()))
                .toList();
    }

    private Reason paced(Broken broken) {
        if (broken.other() == Broken.NOBODY) {
            LocalDate last = translation.lastAddition().orElseThrow();
            List<String> then = translation.request.wishes().stream()
                    .map(Wish::id)
                    .filter(id -> translation
                            .request
                            .inDisplay(id)
                            .filter(last::equals)
                            .isPresent())
                    .toList();
            return new Paced(last, then, 0);
        }
        List<Integer> then = schedule.placed().stream()
                .filter(each -> schedule.out().get(each) == broken.day())
                .toList();
        int own = then.contains(broken.batch()) ? mass(broken.batch()) : 0;
        int room = Math.max(0, Rulebook.room(translation.puzzle, schedule, broken.day()) + own);
        List<String> ids = then.stream()
                .filter(each -> each != broken.batch())
                .map(this::id)
                .toList();
        return new Paced(date(broken), ids, translation.grains.mass(room));
    }

    private double limit(Broken broken) {
        int room = Rulebook.room(translation.puzzle, schedule, broken.day());
        int own = schedule.placed().stream()
                .filter(each -> schedule.out().get(each) == broken.day())
                .mapToInt(this::mass)
                .sum();
        return translation.grains.mass(room + own);
    }

    private LocalDate dry(Broken broken) {
        int tank = schedule.tank().get(broken.batch());
        return date(broken).plusDays(translation.puzzle.tanks().get(tank).dry());
    }

    private LocalDate date(Broken broken) {
        return translation.date(broken.day());
    }

    private String tank(Broken broken) {
        return translation
                .request
                .tanks()
                .get(schedule.tank().get(broken.batch()))
                .name();
    }

    private int mass(int batch) {
        return translation.puzzle.batches().get(batch).mass();
    }

    private Wish wish(int batch) {
        return translation.wishes.get(batch);
    }

    private String id(int batch) {
        return wish(batch).id();
    }
}
