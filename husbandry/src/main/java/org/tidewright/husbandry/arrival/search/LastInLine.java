package org.tidewright.husbandry.arrival.search;

import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;
import org.tidewright.husbandry.arrival.search.Puzzle.Batch;
import org.tidewright.husbandry.arrival.search.Puzzle.Month;
import org.tidewright.husbandry.arrival.search.Puzzle.Order;
import org.tidewright.husbandry.arrival.search.Puzzle.Tank;

/** A batch that is not placed, put behind all others: what it breaks even there stands against it, whatever the order. */
public final class LastInLine {
    private final Puzzle puzzle;
    private final Schedule schedule;
    private final int batch;

    private LastInLine(Puzzle puzzle, Schedule schedule, int batch) {
        this.puzzle = puzzle;
        this.schedule = schedule;
        this.batch = batch;
    }

    /** The schedule with the batch as early as can be behind all others. */
    public static Schedule put(Puzzle puzzle, Schedule schedule, int batch) {
        return new LastInLine(puzzle, schedule, batch).put();
    }

    /** The rules that it breaks there, the batch's and towards it. */
    public static List<Broken> broken(Puzzle puzzle, Schedule put, int batch) {
        return Rulebook.broken(puzzle, put).stream()
                .filter(each -> each.batch() == batch || each.other() == batch)
                .toList();
    }

    private Schedule put() {
        Batch each = puzzle.batches().get(batch);
        if (each.straight()) {
            int out = affordable(into(Math.max(0, each.fromShop())));
            return schedule.with(List.of(batch), -1, out, out);
        }
        if (each.stay() != null) {
            int tank = each.stay().tank();
            int in = each.stay().since();
            return schedule.with(List.of(batch), tank, in, into(in + puzzle.need(batch, tank)));
        }
        return IntStream.range(0, puzzle.tanks().size())
                .filter(tank -> puzzle.tanks().get(tank).room() >= each.mass())
                .mapToObj(this::inTank)
                .min(Comparator.comparing(put -> put.out().get(batch)))
                .orElseGet(() -> inTank(0));
    }

    private Schedule inTank(int number) {
        Tank tank = puzzle.tanks().get(number);
        int free = tank.free();
        for (int other : schedule.placed()) {
            if (schedule.tank().get(other) == number) {
                free = Math.max(free, schedule.out().get(other) + tank.dry());
            }
        }
        int in = affordable(
                Math.max(Math.max(0, free), puzzle.batches().get(batch).fromShop()));
        return schedule.with(List.of(batch), number, in, into(in + puzzle.need(batch, number)));
    }

    /** The first day from which it can go into the display, after all others and once those before it are in. */
    private int into(int from) {
        int day = Math.max(
                Math.max(from, puzzle.firstAddition()),
                puzzle.batches().get(batch).intoDisplay());
        for (int other : schedule.placed()) {
            day = Math.max(day, schedule.out().get(other) + puzzle.gap());
        }
        for (Order order : puzzle.orders()) {
            if (order.second() == batch && schedule.has(order.first())) {
                day = Math.max(day, schedule.out().get(order.first()) + puzzle.lag(order));
            }
        }
        return day;
    }

    /** The first day from one on in whose month there is money for it; that day itself if there is never. */
    private int affordable(int from) {
        int price = puzzle.batches().get(batch).price();
        for (int month = Math.max(0, puzzle.month(from));
                month < puzzle.months().size();
                month++) {
            Month each = puzzle.months().get(month);
            int now = month;
            int spent = schedule.placed().stream()
                    .filter(other -> puzzle.batches().get(other).stay() == null)
                    .filter(other -> puzzle.month(schedule.in().get(other)) == now)
                    .mapToInt(other -> puzzle.batches().get(other).price())
                    .sum();
            if (spent + price <= each.budget()) {
                return Math.max(from, each.from());
            }
        }
        return from;
    }
}
