package org.tidewright.husbandry.arrival;

import java.time.LocalDate;
import java.time.YearMonth;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.tidewright.husbandry.arrival.Happened.InQuarantine;
import org.tidewright.husbandry.arrival.search.Puzzle;
import org.tidewright.husbandry.arrival.search.Puzzle.Batch;
import org.tidewright.husbandry.arrival.search.Puzzle.Month;
import org.tidewright.husbandry.arrival.search.Puzzle.Order;
import org.tidewright.husbandry.arrival.search.Puzzle.Pair;
import org.tidewright.husbandry.arrival.search.Puzzle.Stay;
import org.tidewright.husbandry.arrival.search.Puzzle.Tank;

/** A request in whole numbers, and back. What is in the display already only sets days to the others. */
final class Translation {
    /** The order in which wishes should rather come. Of equal temperament the smaller first: common practice. */
    private static final Comparator<Wish> TIMID_FIRST =
            Comparator.comparingInt(Wish::temperament).thenComparingDouble(Wish::length);

    final ArrivalRequest request;
    final List<Precedence> precedences;
    final Map<String, List<Reason>> hopeless;

    /** What the batches of the puzzle are, in its order. */
    final List<Wish> wishes;

    final Grains grains;
    final Puzzle puzzle;

    Translation(ArrivalRequest request) {
        this.request = request;
        precedences = Precedence.of(request);
        hopeless = Hopeless.of(request, precedences);
        wishes = request.wishes().stream()
                .filter(wish -> request.inDisplay(wish.id()).isEmpty() && !request.isLost(wish.id()))
                .filter(wish -> !hopeless.containsKey(wish.id()))
                .sorted(TIMID_FIRST)
                .toList();
        Pace pace = request.pace();
        grains = Grains.of(
                pace.present() + wishes.stream().mapToDouble(Wish::load).sum());
        puzzle = new Puzzle(
                request.horizonDays(),
                pace.daysBetween(),
                firstAddition(),
                grains.down(pace.spare()),
                grains.down(pace.share() * pace.present()),
                batches(),
                tanks(),
                orders(),
                apart(),
                months());
    }

    /** A day in the puzzle's count. */
    int day(LocalDate date) {
        long days = ChronoUnit.DAYS.between(request.start(), date);
        return (int) Math.max(-100_000, Math.min(100_000, days));
    }

    LocalDate date(int day) {
        return request.start().plusDays(day);
    }

    int batch(String id) {
        return wishes.stream().map(Wish::id).toList().indexOf(id);
    }

    /** The last addition before the plan: in the request, or of what has happened. */
    Optional<LocalDate> lastAddition() {
        List<LocalDate> days = new ArrayList<>();
        Optional.ofNullable(request.pace().lastAddition()).ifPresent(days::add);
        request.wishes().forEach(wish -> request.inDisplay(wish.id()).ifPresent(days::add));
        return days.stream().max(Comparator.naturalOrder());
    }

    private int firstAddition() {
        return Math.max(
                0,
                lastAddition()
                        .map(day -> day(day) + request.pace().daysBetween())
                        .orElse(0));
    }

    private List<Batch> batches() {
        List<Batch> batches = new ArrayList<>();
        int rank = 0;
        for (int i = 0; i < wishes.size(); i++) {
            Wish wish = wishes.get(i);
            rank += i > 0 && TIMID_FIRST.compare(wishes.get(i - 1), wish) < 0 ? 1 : 0;
            int mass = grains.up(wish.load());
            int fromShop = wish.fromShop() == null ? 0 : day(wish.fromShop().day());
            Long price = wish.price();
            batches.add(new Batch(
                    mass,
                    grains.down(request.pace().share() * wish.load()),
                    wish.quarantineDays(),
                    fromShop,
                    intoDisplay(wish),
                    price == null ? 0 : price.intValue(),
                    rank,
                    stay(wish)));
        }
        return batches;
    }

    private @Nullable Stay stay(Wish wish) {
        return request.happened(wish.id())
                .filter(InQuarantine.class::isInstance)
                .map(InQuarantine.class::cast)
                .map(each -> new Stay(tank(each.tank()), day(each.since())))
                .orElse(null);
    }

    private int tank(String name) {
        return request.tanks().stream().map(QuarantineTank::name).toList().indexOf(name);
    }

    private int intoDisplay(Wish wish) {
        int day = wish.intoDisplay() == null ? 0 : day(wish.intoDisplay().day());
        for (Precedence each : precedences) {
            if (each.second().equals(wish.id())) {
                day = Math.max(
                        day,
                        request.inDisplay(each.first())
                                .map(first -> day(first) + each.days())
                                .orElse(0));
            }
        }
        return day;
    }

    /** A tank in which somebody stays who cannot go into the display is not free for anybody else. */
    private List<Tank> tanks() {
        return request.tanks().stream()
                .map(tank -> new Tank(
                        grains.down(tank.capacity()),
                        tank.batches(),
                        isBlocked(tank) ? request.horizonDays() + 1 : day(tank.freeFrom()),
                        tank.dryDays(),
                        tank.watchDays()))
                .toList();
    }

    private boolean isBlocked(QuarantineTank tank) {
        return request.happened().stream()
                .filter(each -> hopeless.containsKey(each.id()))
                .anyMatch(each -> each instanceof InQuarantine quarantine
                        && quarantine.tank().equals(tank.name()));
    }

    private List<Order> orders() {
        return precedences.stream()
                .filter(each -> batch(each.first()) >= 0 && batch(each.second()) >= 0)
                .map(each -> new Order(batch(each.first()), batch(each.second()), each.days(), each.needed()))
                .toList();
    }

    private List<Pair> apart() {
        List<Pair> apart = new ArrayList<>();
        for (int one = 0; one < wishes.size(); one++) {
            for (String id : wishes.get(one).apart()) {
                if (batch(id) >= 0 && batch(id) != one) {
                    apart.add(new Pair(one, batch(id)));
                }
            }
        }
        return apart;
    }

    private List<Month> months() {
        Long budget = request.pace().budget();
        List<Month> months = new ArrayList<>();
        if (budget != null) {
            YearMonth last = YearMonth.from(request.end());
            for (YearMonth month = YearMonth.from(request.start()); !month.isAfter(last); month = month.plusMonths(1)) {
                months.add(new Month(day(month.atDay(1)), (int) Math.max(0, budget - spent(month))));
            }
        }
        return months;
    }

    /** What has come in a month already. */
    private long spent(YearMonth month) {
        long spent = 0;
        for (Happened each : request.happened()) {
            Long price = request.wish(each.id()).map(Wish::price).orElse(null);
            if (price != null && YearMonth.from(each.since()).equals(month)) {
                spent += price;
            }
        }
        return spent;
    }
}
