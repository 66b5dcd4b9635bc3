package org.tidewright.husbandry.arrival.search;

import java.util.ArrayList;
import java.util.List;
import org.tidewright.husbandry.arrival.search.Puzzle.Batch;
import org.tidewright.husbandry.arrival.search.Puzzle.Tank;

/**
 * How far the line of batches is settled in the course of a search: those at its head whose tank is known too, and which
 * days that leaves for the rest.
 */
final class Decided {
    private final ArrivalModel at;

    /** Batches at the head of the line. */
    int count;

    /** The day on which the last of them goes into the display, at the earliest. */
    int day;

    /** The sum of such days. */
    int sum;

    /** What all of them let a later addition have. */
    int welcome;

    /** Whether another batch may still go into the display on that day. */
    boolean open;

    /** From when a tank may have its next stay. */
    final int[] free;

    /** Those that come after the head, or not at all. */
    final List<Integer> rest = new ArrayList<>();

    /** Those that are known not to be placed. */
    int never;

    private Decided(ArrivalModel at) {
        this.at = at;
        day = at.puzzle.firstAddition();
        welcome = at.puzzle.welcome();
        free = at.puzzle.tanks().stream().mapToInt(Tank::free).toArray();
    }

    static Decided of(ArrivalModel at) {
        Decided decided = new Decided(at);
        while (decided.count < at.size && decided.isKnown(decided.count)) {
            decided.add(at.line[decided.count].getValue());
        }
        decided.remember();
        return decided;
    }

    private boolean isKnown(int place) {
        if (!at.line[place].isInstantiated()) {
            return false;
        }
        int batch = at.line[place].getValue();
        boolean joined = place == 0 || at.sameDay[at.line[place - 1].getValue()][batch].isInstantiated();
        return at.tank[batch].isInstantiated() && at.placed[batch].isInstantiatedTo(1) && joined;
    }

    private void add(int batch) {
        day = at.out[batch].getLB();
        sum += day;
        welcome += at.puzzle.batches().get(batch).welcome();
        int tank = at.tank[batch].getValue();
        if (tank < free.length) {
            free[tank] = Math.max(free[tank], day + at.puzzle.tanks().get(tank).dry());
        }
        count++;
    }

    private void remember() {
        boolean[] ahead = new boolean[at.size];
        for (int place = 0; place < count; place++) {
            ahead[at.line[place].getValue()] = true;
        }
        for (int batch = 0; batch < at.size; batch++) {
            if (at.placed[batch].isInstantiatedTo(0)) {
                never++;
            } else if (!ahead[batch]) {
                rest.add(batch);
                occupy(batch);
            }
        }
        if (count > 0) {
            int head = at.line[count - 1].getValue();
            boolean closed = count < at.size
                    && at.line[count].isInstantiated()
                    && at.sameDay[head][at.line[count].getValue()].isInstantiatedTo(0);
            open = !closed;
            if (open) {
                reopen();
            }
        }
    }

    /** A batch that is in a tank already leaves it before anybody else comes. */
    private void occupy(int batch) {
        Batch each = at.puzzle.batches().get(batch);
        if (each.stay() != null) {
            int tank = each.stay().tank();
            int dry = at.out[batch].getLB() + at.puzzle.tanks().get(tank).dry();
            free[tank] = Math.max(free[tank], dry);
        }
    }

    /** Where stays that end on the last day have places left, others may share them: they count as not begun. */
    private void reopen() {
        for (int tank = 0; tank < free.length; tank++) {
            int there = 0;
            int since = Integer.MAX_VALUE;
            for (int place = 0; place < count; place++) {
                int batch = at.line[place].getValue();
                if (at.tank[batch].isInstantiatedTo(tank) && at.out[batch].getLB() == day) {
                    there++;
                    since = Math.min(since, at.in[batch].getLB());
                }
            }
            if (there > 0 && there < at.puzzle.tanks().get(tank).places()) {
                free[tank] = Math.min(free[tank], since);
            }
        }
    }
}
