package org.tidewright.husbandry.arrival;

import java.time.LocalDate;
import java.time.YearMonth;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.tidewright.husbandry.arrival.Arrival.Stage;

/**
 * The best plan of a short list, found by trying every day and every tank for every wish; {@link PlanChecker} judges each. A
 * stay begins as late as it can, or on the last day of an earlier month for the sake of money: no other day could help.
 */
final class BestByTrying {
    private static final Pattern LASTING = Pattern.compile(
            "too near|wrong order|too soon|too early|before|not free|" + "overloaded|after the last day");

    private final ArrivalRequest request;
    private int[] best;

    private BestByTrying(ArrivalRequest request, int[] known) {
        this.request = request;
        best = known;
    }

    /** The least cost of all plans, or a known one where none is less. */
    static int[] cost(ArrivalRequest request, int[] known) {
        BestByTrying trying = new BestByTrying(request, known);
        trying.next(0, new ArrayList<>(), 0, 0, 0);
        return trying.best;
    }

    /** Wishes left out, last day, sum of days, places swapped: the least of the first, then of the second … is best. */
    static int[] cost(ArrivalPlan plan) {
        return cost(plan.request(), plan.arrivals());
    }

    private static int[] cost(ArrivalRequest request, List<Arrival> arrivals) {
        int last = 0;
        int sum = 0;
        int swapped = 0;
        for (Arrival one : arrivals) {
            int day = (int) ChronoUnit.DAYS.between(request.start(), one.out());
            last = Math.max(last, day);
            sum += day;
            for (Arrival other : arrivals) {
                swapped += rather(request, one, other) && one.out().isAfter(other.out()) ? 1 : 0;
            }
        }
        return new int[] {request.wishes().size() - arrivals.size(), last, sum, swapped};
    }

    private static boolean rather(ArrivalRequest request, Arrival one, Arrival other) {
        Wish first = request.wish(one.id()).orElseThrow();
        Wish second = request.wish(other.id()).orElseThrow();
        return first.temperament() == second.temperament()
                ? first.length() < second.length()
                : first.temperament() < second.temperament();
    }

    private void next(int wish, List<Arrival> arrivals, int dropped, int last, int sum) {
        if (Arrays.compare(atLeast(wish, dropped, last, sum), Arrays.copyOf(best, 3)) > 0) {
            return;
        }
        if (wish == request.wishes().size()) {
            buy(arrivals);
            return;
        }
        Wish each = request.wishes().get(wish);
        Set<String> gone = request.wishes().subList(0, wish).stream()
                .map(Wish::id)
                .filter(id -> arrivals.stream().noneMatch(there -> there.id().equals(id)))
                .collect(Collectors.toSet());
        boolean alone = each.after().stream().anyMatch(after -> gone.contains(after.id()));
        for (int day = 0; day <= request.horizonDays() && !alone; day++) {
            LocalDate out = request.start().plusDays(day);
            List<String> tanks = each.quarantineDays() == 0
                    ? Arrays.asList((String) null)
                    : request.tanks().stream().map(QuarantineTank::name).toList();
            for (String tank : tanks) {
                arrivals.add(new Arrival(each.id(), tank, out, out, List.of(), Stage.PLANNED));
                if (mayBe(arrivals)) {
                    next(wish + 1, arrivals, dropped, Math.max(last, day), sum + day);
                }
                arrivals.remove(arrivals.size() - 1);
            }
        }
        if (!isMissed(request, each.id(), arrivals)) {
            next(wish + 1, arrivals, dropped + 1, last, sum);
        }
    }

    /** Only to be quick: none of the wishes left can be in the display before its own quarantine is over. */
    private int[] atLeast(int next, int dropped, int last, int sum) {
        int[] least = {dropped, last, sum};
        for (Wish wish : request.wishes().subList(next, request.wishes().size())) {
            int watch = request.tanks().stream()
                    .mapToInt(QuarantineTank::watchDays)
                    .min()
                    .orElse(0);
            int days = wish.quarantineDays() == 0 ? 0 : Math.max(watch, wish.quarantineDays());
            if (dropped == best[0]) {
                least[1] = Math.max(least[1], days);
                least[2] += days;
            }
        }
        return least;
    }

    /** Only to be quick: faults of a few wishes that no further wish, and no earlier coming, would mend. */
    private boolean mayBe(List<Arrival> arrivals) {
        List<Arrival> latest = arrivals.stream()
                .map(each -> new Arrival(
                        each.id(), each.tank(), comings(List.of(each)).get(0), each.out(), List.of(), Stage.PLANNED))
                .toList();
        return isBearable(arrivals.get(arrivals.size() - 1), arrivals)
                && PlanChecker.faults(request, latest).stream().noneMatch(LASTING.asPredicate());
    }

    /** Only to be quick: whether a wish is ever affordable, and its addition bearable once all others are there. */
    private boolean isBearable(Arrival newest, List<Arrival> arrivals) {
        Pace pace = request.pace();
        Long price = request.wish(newest.id()).orElseThrow().price();
        double then = 0;
        double others = pace.present();
        for (Wish wish : request.wishes()) {
            boolean together = arrivals.stream()
                    .anyMatch(each -> each.id().equals(wish.id()) && each.out().equals(newest.out()));
            then += together ? wish.load() : 0;
            others += together ? 0 : wish.load();
        }
        return (price == null || pace.budget() == null || price <= pace.budget())
                && then <= Math.max(pace.spare(), pace.share() * others) + 1e-9;
    }

    /** Only to be quick: whether somebody who comes after it is there, though it is not. */
    private static boolean isMissed(ArrivalRequest request, String id, List<Arrival> arrivals) {
        return arrivals.stream()
                .flatMap(each -> request.wish(each.id()).orElseThrow().after().stream())
                .anyMatch(after -> after.id().equals(id));
    }

    private void buy(List<Arrival> arrivals) {
        if (Arrays.compare(cost(request, arrivals), best) < 0) {
            List<List<Arrival>> stays = List.copyOf(arrivals.stream()
                    .collect(Collectors.groupingBy(each -> each.tank() == null ? each.id() : each.tank() + each.out()))
                    .values());
            buy(stays, 0, new ArrayList<>());
        }
    }

    private void buy(List<List<Arrival>> stays, int next, List<Arrival> bought) {
        if (next == stays.size()) {
            if (PlanChecker.faults(request, bought).isEmpty()) {
                best = cost(request, bought);
            }
            return;
        }
        List<Arrival> stay = stays.get(next);
        for (LocalDate in : comings(stay)) {
            List<Arrival> more = new ArrayList<>(bought);
            stay.forEach(
                    each -> more.add(new Arrival(each.id(), each.tank(), in, each.out(), List.of(), Stage.PLANNED)));
            buy(stays, next + 1, more);
        }
    }

    private List<LocalDate> comings(List<Arrival> stay) {
        Arrival first = stay.get(0);
        if (first.tank() == null) {
            return List.of(first.out());
        }
        int watch = request.tanks().stream()
                .filter(tank -> tank.name().equals(first.tank()))
                .mapToInt(QuarantineTank::watchDays)
                .sum();
        int need = stay.stream()
                .mapToInt(each -> request.wish(each.id()).orElseThrow().quarantineDays())
                .reduce(watch, Math::max);
        LocalDate latest = first.out().minusDays(need);
        List<LocalDate> comings = new ArrayList<>(List.of(latest));
        if (request.pace().budget() != null) {
            YearMonth month = YearMonth.from(request.start());
            for (; month.isBefore(YearMonth.from(latest)); month = month.plusMonths(1)) {
                comings.add(month.atEndOfMonth());
            }
        }
        return comings;
    }
}
