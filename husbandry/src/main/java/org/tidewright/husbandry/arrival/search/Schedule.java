package org.tidewright.husbandry.arrival.search;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * An answer: for each batch its tank (-1 without one), the day it comes and the day it goes into the display, both {@link
 * #NEVER} if it is not placed.
 */
public record Schedule(List<Integer> tank, List<Integer> in, List<Integer> out) {
    /** No day. */
    public static final int NEVER = Integer.MAX_VALUE;

    /** Keeps lists of its own. */
    public Schedule {
        tank = List.copyOf(tank);
        in = List.copyOf(in);
        out = List.copyOf(out);
    }

    /** Whether a batch is placed. */
    public boolean has(int batch) {
        return out.get(batch) != NEVER;
    }

    /** The batches that are placed, by the day they go into the display. */
    public List<Integer> placed() {
        List<Integer> placed = new ArrayList<>();
        for (int batch = 0; batch < out.size(); batch++) {
            if (has(batch)) {
                placed.add(batch);
            }
        }
        placed.sort(Comparator.<Integer>comparingInt(out::get).thenComparing(Comparator.naturalOrder()));
        return placed;
    }

    /** Whether two batches share a stay. */
    public boolean together(int one, int other) {
        return has(one)
                && has(other)
                && tank.get(one) >= 0
                && tank.get(one).equals(tank.get(other))
                && out.get(one).equals(out.get(other));
    }

    /** A batch and those that share its stay. */
    public List<Integer> stay(int batch) {
        List<Integer> stay = new ArrayList<>();
        for (int other = 0; other < out.size(); other++) {
            if (other == batch || together(batch, other)) {
                stay.add(other);
            }
        }
        return stay;
    }

    /** The same with some batches' days moved. */
    public Schedule with(List<Integer> batches, int newTank, int newIn, int newOut) {
        List<Integer> tanks = new ArrayList<>(tank);
        List<Integer> ins = new ArrayList<>(in);
        List<Integer> outs = new ArrayList<>(out);
        for (int batch : batches) {
            tanks.set(batch, newTank);
            ins.set(batch, newIn);
            outs.set(batch, newOut);
        }
        return new Schedule(tanks, ins, outs);
    }

    /** What is to be as small as can be, the first first: batches not placed, the last day, the sum of days, places swapped. */
    List<Integer> cost(Puzzle puzzle) {
        List<Integer> placed = placed();
        int last = 0;
        int sum = 0;
        int swapped = 0;
        for (int one : placed) {
            last = Math.max(last, out.get(one));
            sum += out.get(one);
            for (int other : placed) {
                boolean rather = puzzle.batches().get(one).rank()
                        < puzzle.batches().get(other).rank();
                swapped += rather && out.get(one) > out.get(other) ? 1 : 0;
            }
        }
        return List.of(out.size() - placed.size(), last, sum, swapped);
    }
}
