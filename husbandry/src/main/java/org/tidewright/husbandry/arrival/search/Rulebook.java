package org.tidewright.husbandry.arrival.search;

import static org.tidewright.husbandry.arrival.search.Broken.NOBODY;

import java.util.ArrayList;
import java.util.List;
import org.tidewright.husbandry.arrival.search.Broken.Rule;
import org.tidewright.husbandry.arrival.search.Puzzle.Batch;
import org.tidewright.husbandry.arrival.search.Puzzle.Order;
import org.tidewright.husbandry.arrival.search.Puzzle.Tank;

/** The rules in plain code: which of them a schedule breaks, and whose day breaks them. */
public final class Rulebook {
    private final Puzzle puzzle;
    private final Schedule schedule;
    private final List<Broken> broken = new ArrayList<>();

    private Rulebook(Puzzle puzzle, Schedule schedule) {
        this.puzzle = puzzle;
        this.schedule = schedule;
    }

    /** All rules that it breaks; none if it is sound. */
    public static List<Broken> broken(Puzzle puzzle, Schedule schedule) {
        Rulebook rulebook = new Rulebook(puzzle, schedule);
        List<Integer> placed = schedule.placed();
        for (int batch : placed) {
            rulebook.days(batch);
            rulebook.pace(batch, placed);
            rulebook.budget(batch, placed);
            if (schedule.tank().get(batch) >= 0) {
                rulebook.tank(batch);
                rulebook.room(batch);
            }
            for (int other : placed) {
                if (other != batch) {
                    rulebook.gap(batch, other);
                    rulebook.company(batch, other);
                }
            }
        }
        puzzle.orders().forEach(rulebook::order);
        return List.copyOf(rulebook.broken);
    }

    /** How much more an addition on a day could have, after what is in the display by then. */
    public static int room(Puzzle puzzle, Schedule schedule, int day) {
        int before = puzzle.welcome();
        int then = 0;
        for (int batch : schedule.placed()) {
            Batch each = puzzle.batches().get(batch);
            before += out(schedule, batch) < day ? each.welcome() : 0;
            then += out(schedule, batch) == day ? each.mass() : 0;
        }
        return Math.max(puzzle.spare(), before) - then;
    }

    private void days(int batch) {
        Batch each = puzzle.batches().get(batch);
        int in = in(batch);
        int out = out(schedule, batch);
        if (each.stay() == null) {
            require(in >= 0, Rule.START, batch, NOBODY, 0);
            require(in >= each.fromShop(), Rule.SHOP, batch, NOBODY, each.fromShop());
        } else {
            boolean same = each.stay().since() == in
                    && schedule.tank().get(batch).equals(each.stay().tank());
            require(same, Rule.HAPPENED, batch, NOBODY, each.stay().since());
            require(out >= 0, Rule.START, batch, NOBODY, 0);
        }
        require(out >= each.intoDisplay(), Rule.DISPLAY, batch, NOBODY, each.intoDisplay());
        require(out >= puzzle.firstAddition(), Rule.GAP, batch, NOBODY, puzzle.firstAddition());
        require(out <= puzzle.lastDay(), Rule.HORIZON, batch, NOBODY, puzzle.lastDay());
        int tank = schedule.tank().get(batch);
        boolean longEnough = each.straight() ? in == out : tank >= 0 && out - in >= puzzle.need(batch, tank);
        require(longEnough, Rule.QUARANTINE, batch, NOBODY, 0);
    }

    private void tank(int batch) {
        Tank tank = puzzle.tanks().get(schedule.tank().get(batch));
        if (puzzle.batches().get(batch).stay() == null) {
            require(in(batch) >= tank.free(), Rule.FREE, batch, NOBODY, tank.free());
        }
    }

    private void room(int batch) {
        Tank tank = puzzle.tanks().get(schedule.tank().get(batch));
        List<Integer> stay = schedule.stay(batch);
        int mass = stay.stream()
                .mapToInt(each -> puzzle.batches().get(each).mass())
                .sum();
        boolean happened =
                stay.stream().allMatch(each -> puzzle.batches().get(each).stay() != null);
        boolean holds = mass <= tank.room() && stay.size() <= tank.places();
        require(happened || holds, Rule.ROOM, batch, NOBODY, 0);
    }

    /** Two batches in one tank: a stay they share, or one after the other. */
    private void company(int batch, int other) {
        int shared = schedule.tank().get(batch);
        if (shared < 0 || !schedule.tank().get(other).equals(shared)) {
            return;
        }
        boolean happened = puzzle.batches().get(batch).stay() != null
                && puzzle.batches().get(other).stay() != null;
        if (schedule.together(batch, other)) {
            require(happened || in(batch) == in(other), Rule.TAKEN, batch, other, out(schedule, other));
            require(happened || !puzzle.keptApart(batch, other), Rule.APART, batch, other, out(schedule, other));
        } else if (out(schedule, other) < out(schedule, batch)) {
            int empty = out(schedule, other);
            require(in(batch) >= empty, Rule.TAKEN, batch, other, empty);
            int dry = empty + puzzle.tanks().get(shared).dry();
            require(in(batch) < empty || in(batch) >= dry, Rule.DRY, batch, other, empty);
        }
    }

    private void gap(int batch, int other) {
        int apart = out(schedule, batch) - out(schedule, other);
        require(apart == 0 || Math.abs(apart) >= puzzle.gap(), Rule.GAP, batch, other, out(schedule, other));
    }

    private void pace(int batch, List<Integer> placed) {
        int day = out(schedule, batch);
        boolean first = placed.stream()
                .filter(other -> out(schedule, other) == day)
                .findFirst()
                .orElseThrow()
                .equals(batch);
        require(!first || room(puzzle, schedule, day) >= 0, Rule.PACE, batch, NOBODY, day);
    }

    private void budget(int batch, List<Integer> placed) {
        int month = bought(batch) ? puzzle.month(in(batch)) : -1;
        if (month < 0) {
            return;
        }
        int spent = 0;
        for (int other : placed) {
            boolean then = bought(other) && puzzle.month(in(other)) == month;
            spent += then ? puzzle.batches().get(other).price() : 0;
        }
        int least = puzzle.months().get(month).budget();
        require(
                spent <= least,
                Rule.BUDGET,
                batch,
                NOBODY,
                puzzle.months().get(month).from());
    }

    /** What has come already is paid; what costs nothing fits any month. */
    private boolean bought(int batch) {
        Batch each = puzzle.batches().get(batch);
        return each.stay() == null && each.price() > 0;
    }

    private void order(Order order) {
        if (schedule.has(order.first()) && schedule.has(order.second())) {
            int first = out(schedule, order.first());
            boolean kept = out(schedule, order.second()) >= first + puzzle.lag(order);
            require(kept, Rule.ORDER, order.second(), order.first(), first);
        } else if (order.needed()) {
            require(!schedule.has(order.second()), Rule.NEEDED, order.second(), order.first(), 0);
        }
    }

    private int in(int batch) {
        return schedule.in().get(batch);
    }

    private static int out(Schedule schedule, int batch) {
        return schedule.out().get(batch);
    }

    private void require(boolean kept, Rule rule, int batch, int other, int day) {
        if (!kept) {
            broken.add(new Broken(rule, batch, other, day));
        }
    }
}
