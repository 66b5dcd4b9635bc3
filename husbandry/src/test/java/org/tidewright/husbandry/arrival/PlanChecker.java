package org.tidewright.husbandry.arrival;

import java.time.LocalDate;
import java.time.YearMonth;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.Supplier;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.tidewright.husbandry.arrival.Arrival.Stage;
import org.tidewright.husbandry.arrival.Happened.InDisplay;
import org.tidewright.husbandry.arrival.Happened.InQuarantine;
import org.tidewright.husbandry.arrival.Happened.Lost;

/**
 * Whether a plan keeps every rule, judged by the plan's own dates and masses: written from docs/science/arrival.md, and
 * nothing of the planner's code is used.
 */
public final class PlanChecker {
    /** Relative to masses of grams. */
    private static final double ROUNDING = 1e-9;

    private final ArrivalRequest request;
    private final List<Arrival> arrivals;
    private final List<String> faults = new ArrayList<>();

    private PlanChecker(ArrivalRequest request, List<Arrival> arrivals) {
        this.request = request;
        this.arrivals = arrivals;
    }

    /** What is wrong with a plan; nothing if it is sound. */
    public static List<String> faults(ArrivalPlan plan) {
        PlanChecker checker = new PlanChecker(plan.request(), plan.arrivals());
        checker.everybodyOnce(plan);
        checker.dates();
        return checker.faults;
    }

    /** What is wrong with dates. */
    static List<String> faults(ArrivalRequest request, List<Arrival> arrivals) {
        PlanChecker checker = new PlanChecker(request, arrivals);
        checker.dates();
        return checker.faults;
    }

    private void dates() {
        for (Arrival arrival : arrivals) {
            if (arrival.stage() == Stage.PLANNED) {
                planned(arrival);
            } else {
                happened(arrival);
            }
            if (arrival.stage() != Stage.IN_DISPLAY) {
                intoDisplay(arrival);
            }
        }
        request.tanks().forEach(this::tank);
        additions();
        budget();
        order();
    }

    private void everybodyOnce(ArrivalPlan plan) {
        List<String> told = new ArrayList<>(arrivals.stream().map(Arrival::id).toList());
        plan.notPlaced().forEach(each -> told.add(each.id()));
        for (Wish wish : request.wishes()) {
            boolean lost = happened(wish.id()) instanceof Lost;
            long times = told.stream().filter(wish.id()::equals).count();
            require(times == (lost ? 0 : 1), () -> wish.id() + " is told " + times + " times");
        }
        plan.notPlaced()
                .forEach(each ->
                        require(!each.reasons().isEmpty(), () -> each.id() + " is not placed without a reason"));
    }

    private void planned(Arrival arrival) {
        Wish wish = wish(arrival.id());
        require(!arrival.in().isBefore(request.start()), () -> arrival.id() + " comes before the first day");
        NotBefore shop = wish.fromShop();
        require(shop == null || !arrival.in().isBefore(shop.day()), () -> arrival.id() + " comes before it can be had");
        require(
                (arrival.tank() == null) == (wish.quarantineDays() == 0),
                () -> arrival.id() + " is in a tank or not as it should be");
        if (arrival.tank() == null) {
            require(arrival.in().equals(arrival.out()), () -> arrival.id() + " is nowhere for a while");
        }
    }

    private void happened(Arrival arrival) {
        Happened was = happened(arrival.id());
        if (was instanceof InDisplay there) {
            require(
                    arrival.stage() == Stage.IN_DISPLAY
                            && arrival.out().equals(there.day())
                            && arrival.in().equals(there.since()),
                    () -> arrival.id() + " went in on another day");
        } else if (was instanceof InQuarantine quarantine) {
            require(
                    arrival.stage() == Stage.IN_QUARANTINE
                            && quarantine.tank().equals(arrival.tank())
                            && arrival.in().equals(quarantine.since()),
                    () -> arrival.id() + " came on another day or into another tank");
        } else {
            require(false, () -> arrival.id() + " has not come");
        }
    }

    private void intoDisplay(Arrival arrival) {
        Wish wish = wish(arrival.id());
        require(!arrival.out().isBefore(request.start()), () -> arrival.id() + " goes in before the first day");
        require(
                ChronoUnit.DAYS.between(request.start(), arrival.out()) <= request.horizonDays(),
                () -> arrival.id() + " goes in after the last day");
        NotBefore ready = wish.intoDisplay();
        require(ready == null || !arrival.out().isBefore(ready.day()), () -> arrival.id() + " goes in too early");
        if (arrival.tank() != null) {
            int days = Math.max(wish.quarantineDays(), tank(arrival.tank()).watchDays());
            require(
                    ChronoUnit.DAYS.between(arrival.in(), arrival.out()) >= days,
                    () -> arrival.id() + " stays less than " + days + " days");
        }
    }

    private void tank(QuarantineTank tank) {
        List<Arrival> there = arrivals.stream()
                .filter(each -> tank.name().equals(each.tank()) && each.stage() != Stage.IN_DISPLAY)
                .toList();
        for (Arrival arrival : there) {
            if (arrival.stage() == Stage.PLANNED) {
                require(
                        !arrival.in().isBefore(tank.freeFrom()),
                        () -> arrival.id() + " comes into a tank that is not free");
                stay(tank, arrival, there);
            }
            for (Arrival other : there) {
                boolean bothThere = arrival.stage() == Stage.IN_QUARANTINE && other.stage() == Stage.IN_QUARANTINE;
                boolean one = arrival.out().equals(other.out())
                        && (bothThere || arrival.in().equals(other.in()));
                boolean after = !arrival.in().isBefore(other.out().plusDays(tank.dryDays()));
                boolean before = !other.in().isBefore(arrival.out().plusDays(tank.dryDays()));
                require(
                        one || after || before,
                        () -> arrival.id() + " and " + other.id() + " are in " + tank.name() + " in each other's time");
            }
        }
    }

    private void stay(QuarantineTank tank, Arrival arrival, List<Arrival> there) {
        List<Arrival> stay = there.stream()
                .filter(each -> each.in().equals(arrival.in()) && each.out().equals(arrival.out()))
                .toList();
        double load = stay.stream().mapToDouble(each -> wish(each.id()).load()).sum();
        require(load <= tank.capacity() + ROUNDING, () -> tank.name() + " is overloaded by " + arrival.id());
        require(stay.size() <= tank.batches(), () -> tank.name() + " is crowded by " + arrival.id());
        for (Arrival other : stay) {
            boolean apart = wish(arrival.id()).apart().contains(other.id())
                    && !arrival.id().equals(other.id());
            require(!apart, () -> arrival.id() + " shares a stay with " + other.id());
        }
    }

    private void additions() {
        Pace pace = request.pace();
        TreeMap<LocalDate, Double> loads = new TreeMap<>();
        Set<LocalDate> past = new HashSet<>();
        if (pace.lastAddition() != null) {
            past.add(pace.lastAddition());
        }
        for (Arrival arrival : arrivals) {
            if (arrival.stage() == Stage.IN_DISPLAY) {
                past.add(arrival.out());
            } else {
                loads.merge(arrival.out(), wish(arrival.id()).load(), Double::sum);
            }
        }
        double present = pace.present();
        for (Map.Entry<LocalDate, Double> addition : loads.entrySet()) {
            LocalDate day = addition.getKey();
            double most = Math.max(pace.spare(), pace.share() * present);
            require(addition.getValue() <= most + ROUNDING, () -> "the addition of " + day + " is too much");
            present += addition.getValue();
            Set<LocalDate> all = new HashSet<>(past);
            all.addAll(loads.keySet());
            for (LocalDate other : all) {
                long apart = Math.abs(ChronoUnit.DAYS.between(other, day));
                boolean same = other.equals(day) && !past.contains(other);
                require(
                        same || apart >= pace.daysBetween(),
                        () -> "additions of " + other + " and " + day + " are too near");
            }
        }
    }

    private void budget() {
        Long budget = request.pace().budget();
        if (budget == null) {
            return;
        }
        Map<YearMonth, Long> planned = arrivals.stream()
                .filter(each -> each.stage() == Stage.PLANNED)
                .collect(Collectors.groupingBy(
                        each -> YearMonth.from(each.in()), Collectors.summingLong(each -> price(each.id()))));
        planned.forEach((month, cost) -> {
            long past = request.happened().stream()
                    .filter(each -> YearMonth.from(each.since()).equals(month))
                    .mapToLong(each -> price(each.id()))
                    .sum();
            require(cost == 0 || cost + past <= budget, () -> month + " costs " + cost + " besides " + past);
        });
    }

    private long price(String id) {
        return Objects.requireNonNullElse(wish(id).price(), 0L);
    }

    private void order() {
        for (Arrival arrival : arrivals) {
            if (arrival.stage() == Stage.IN_DISPLAY) {
                continue;
            }
            Wish wish = wish(arrival.id());
            for (Wish.After after : wish.after()) {
                Arrival first = arrival(after.id());
                require(first != null, () -> wish.id() + " comes without " + after.id());
                require(
                        first == null || !arrival.out().isBefore(first.out().plusDays(after.days())),
                        () -> wish.id() + " comes too soon after " + after.id());
            }
            for (Arrival other : arrivals) {
                boolean trouble = request.troubles().contains(new Trouble(wish.id(), other.id()))
                        || request.troubles().contains(new Trouble(other.id(), wish.id()));
                int bolder = wish(other.id()).temperament() - wish.temperament();
                if (trouble && Math.abs(bolder) >= 2) {
                    boolean timidFirst = bolder > 0
                            ? arrival.out().isBefore(other.out())
                            : other.out().isBefore(arrival.out());
                    require(timidFirst, () -> wish.id() + " and " + other.id() + " in the wrong order");
                }
            }
            for (PreyFirst pair : request.preyFirst()) {
                prey(pair, wish);
            }
        }
    }

    private void prey(PreyFirst pair, Wish wish) {
        Arrival predator = arrival(pair.predator());
        Arrival prey = arrival(pair.prey());
        boolean concerned = pair.predator().equals(wish.id()) || pair.prey().equals(wish.id());
        if (concerned && predator != null && prey != null) {
            require(
                    !predator.out().isBefore(prey.out().plusDays(pair.days())),
                    () -> pair.predator() + " comes too soon for " + pair.prey());
        }
    }

    private Wish wish(String id) {
        return request.wishes().stream()
                .filter(each -> each.id().equals(id))
                .findFirst()
                .orElseThrow();
    }

    private QuarantineTank tank(String name) {
        return request.tanks().stream()
                .filter(each -> each.name().equals(name))
                .findFirst()
                .orElseThrow();
    }

    private @Nullable Happened happened(String id) {
        return request.happened().stream()
                .filter(each -> each.id().equals(id))
                .findFirst()
                .orElse(null);
    }

    private @Nullable Arrival arrival(String id) {
        return arrivals.stream()
                .filter(each -> each.id().equals(id))
                .findFirst()
                .orElse(null);
    }

    private void require(boolean kept, Supplier<String> fault) {
        if (!kept) {
            faults.add(fault.get());
        }
    }
}
