package org.tidewright.husbandry.arrival.search;

import java.util.Arrays;
import java.util.List;
import org.tidewright.husbandry.arrival.search.Puzzle.Batch;
import org.tidewright.husbandry.arrival.search.Puzzle.Tank;

/**
 * Days before which the first, the second, the third … of some batches cannot go into the display, whichever they are. Two
 * queues are looked at, each as if nothing else mattered: additions take the lightest batches first and lie a gap apart;
 * tanks take the shortest stays first, and their time is one pool.
 */
final class EarliestDays {
    private final Puzzle puzzle;
    private final Decided decided;
    private final int[] days;

    /** Least stays of those that need one, the shortest first. */
    private final int[] stays;

    private final int dry;
    private final int places;

    private EarliestDays(Puzzle puzzle, Decided decided) {
        this.puzzle = puzzle;
        this.decided = decided;
        days = new int[decided.rest.size()];
        int watch = puzzle.tanks().stream().mapToInt(Tank::watch).min().orElse(0);
        stays = batches(decided.rest)
                .filter(batch -> !batch.straight() && batch.stay() == null)
                .mapToInt(batch -> Math.max(watch, batch.quarantine()))
                .sorted()
                .toArray();
        dry = puzzle.tanks().stream().mapToInt(Tank::dry).min().orElse(0);
        places = puzzle.tanks().stream().mapToInt(Tank::places).max().orElse(1);
    }

    private java.util.stream.Stream<Batch> batches(List<Integer> which) {
        return which.stream().map(puzzle.batches()::get);
    }

    /** The days, in order. */
    static int[] of(Puzzle puzzle, Decided decided) {
        EarliestDays earliest = new EarliestDays(puzzle, decided);
        earliest.additions();
        if (!puzzle.tanks().isEmpty()) {
            earliest.tanks();
        }
        return earliest.days;
    }

    /** By each addition no more mass can have come than all limits so far, each as high as it can be. */
    private void additions() {
        int[] masses = batches(decided.rest).mapToInt(Batch::mass).sorted().toArray();
        // The lightest of all may bring the most welcome: no batch brings more than this for its mass.
        double share = batches(decided.rest)
                .mapToDouble(batch -> batch.mass() == 0 ? 0 : (double) batch.welcome() / batch.mass())
                .max()
                .orElse(0);
        int day = decided.count == 0 || decided.open ? decided.day : decided.day + puzzle.gap();
        double welcome = decided.welcome;
        double taken = 0;
        double mass = 0;
        int next = 0;
        while (next < days.length) {
            double most = Math.max(puzzle.spare(), welcome);
            taken += most;
            welcome += share * most;
            int first = next;
            while (next < days.length && mass + masses[next] <= taken + 1e-6) {
                mass += masses[next];
                days[next++] = day;
            }
            if (next == first && most <= 0) {
                Arrays.fill(days, next, days.length, Integer.MAX_VALUE / 2);
                return;
            }
            day += puzzle.gap();
        }
    }

    /** So many stays end by a day only if the tanks' time suffices for the shortest, and each tank's for whole ones. */
    private void tanks() {
        int without = days.length - stays.length;
        int day = Arrays.stream(decided.free).min().orElse(0);
        int work = 0;
        int ended = 0;
        for (int i = 0; i < stays.length; i++) {
            if (i / places + 1 > ended) {
                work += stays[ended] + dry;
                ended++;
            }
            while (!suffices(day, work, ended, i + 1)) {
                day++;
            }
            days[without + i] = Math.max(days[without + i], day);
        }
    }

    private boolean suffices(int day, int work, int ended, int batches) {
        int pool = 0;
        int whole = 0;
        int left = 0;
        for (int tank = 0; tank < decided.free.length; tank++) {
            int time = Math.max(0, day + dry - decided.free[tank]);
            int each = time / Math.max(1, stays[0] + dry);
            pool += time;
            whole += each;
            left += each * puzzle.tanks().get(tank).places();
        }
        return pool >= work && whole >= ended && left >= batches;
    }

    /** A day before which not all stays can have ended: even if the longest share tanks among themselves. */
    static int lastStay(Puzzle puzzle, Decided decided) {
        EarliestDays earliest = new EarliestDays(puzzle, decided);
        int work = 0;
        for (int i = earliest.stays.length - 1; i >= 0; i -= earliest.places) {
            work += earliest.stays[i] + earliest.dry;
        }
        int day = 0;
        while (work > 0 && earliest.pool(day) < work) {
            day++;
        }
        return day;
    }

    private int pool(int day) {
        int pool = 0;
        for (int free : decided.free) {
            pool += Math.max(0, day + dry - free);
        }
        return pool;
    }
}
