package org.tidewright.husbandry.arrival.search;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import org.chocosolver.solver.Solution;
import org.chocosolver.solver.Solver;
import org.chocosolver.solver.search.limits.FailCounter;
import org.chocosolver.solver.variables.IntVar;
import org.jspecify.annotations.Nullable;

/**
 * Finds the best schedule, or a good one where the best would take too long. First all plans are gone through in turn, for a
 * while. If that does not end, a few neighbours in the line at a time are arranged anew, the others kept as they stand to
 * each other, until no such window gets better; then all plans once more, now that most are seen to be worse early on.
 *
 * <p>How long is counted in dead ends and not in time, so that the same question has the same answer on every machine.
 */
public final class Search {
    private static final int NARROW = 5;
    private static final int WIDE = 7;

    private final Puzzle puzzle;
    private final Effort effort;

    private Search(Puzzle puzzle, Effort effort) {
        this.puzzle = puzzle;
        this.effort = effort;
    }

    /**
     * Dead ends after which to give up.
     *
     * @param first of going through all plans
     * @param window of each window
     * @param windows how many windows at most
     * @param last of going through all plans again
     */
    public record Effort(int first, int window, int windows, int last) {
        /** A dozen arrivals in a second or two. */
        public static final Effort USUAL = new Effort(3_000, 600, 40, 6_000);
    }

    /**
     * What was found.
     *
     * @param provenBest whether all plans were gone through, and none is better
     */
    public record Found(Schedule schedule, boolean provenBest) {}

    /** What one attempt found: nothing, where no plan is better; {@code whole} if it saw them all. */
    private record Attempt(@Nullable Schedule schedule, boolean whole) {}

    /** The best schedule of a puzzle, or a good one. */
    public static Found best(Puzzle puzzle, Effort effort) {
        return new Search(puzzle, effort).best();
    }

    private Found best() {
        Schedule best = empty();
        if (puzzle.batches().isEmpty()) {
            return new Found(best, true);
        }
        Attempt first = attempt(best, null, effort.first());
        best = better(first, best);
        if (first.whole()) {
            return new Found(best, true);
        }
        best = byWindows(best);
        Attempt last = attempt(best, null, effort.last());
        return new Found(withAllThatFit(better(last, best)), last.whole());
    }

    /** A plan that is not the best may leave out what simply could come last. */
    private Schedule withAllThatFit(Schedule schedule) {
        Schedule best = schedule;
        for (int batch = 0; batch < puzzle.batches().size(); batch++) {
            if (!best.has(batch)) {
                Schedule more = LastInLine.put(puzzle, best, batch);
                best = Rulebook.broken(puzzle, more).isEmpty() ? more : best;
            }
        }
        return best;
    }

    private Schedule empty() {
        List<Integer> tanks = new ArrayList<>();
        List<Integer> never = new ArrayList<>();
        for (int batch = 0; batch < puzzle.batches().size(); batch++) {
            tanks.add(-1);
            never.add(Schedule.NEVER);
        }
        return new Schedule(tanks, never, never);
    }

    private static Schedule better(Attempt attempt, Schedule best) {
        return attempt.schedule() == null ? best : attempt.schedule();
    }

    /** Narrow windows as long as one of them gets better, then wider ones. */
    private Schedule byWindows(Schedule start) {
        Schedule best = start;
        int width = NARROW;
        int from = 0;
        int vain = 0;
        for (int tried = 0; tried < effort.windows() && width <= WIDE; tried++) {
            List<Integer> line = best.placed();
            int windows = Math.max(1, line.size() - width + 1);
            Attempt attempt = attempt(best, window(best, line, from % windows, width), effort.window());
            if (attempt.schedule() != null) {
                best = attempt.schedule();
                vain = 0;
            } else if (++vain < windows) {
                from++;
            } else {
                width += 2;
                vain = 0;
            }
        }
        return best;
    }

    /** Some neighbours, and whoever is not placed yet. */
    private static Set<Integer> window(Schedule schedule, List<Integer> line, int from, int width) {
        Set<Integer> free = new TreeSet<>(line.subList(from, Math.min(line.size(), from + width)));
        for (int batch = 0; batch < schedule.out().size(); batch++) {
            if (!schedule.has(batch)) {
                free.add(batch);
            }
        }
        return free;
    }

    /** Looks for better than what is known, with all but the free ones as they stand. */
    private Attempt attempt(Schedule known, @Nullable Set<Integer> free, int deadEnds) {
        ArrivalModel at = new ArrivalModel(puzzle);
        IntVar[] bar = known.cost(puzzle).stream().map(at.model::intVar).toArray(IntVar[]::new);
        at.model.lexLess(at.costs(), bar).post();
        if (free != null) {
            keep(at, known, free);
        }
        Solver solver = at.model.getSolver();
        solver.setSearch(new InTurn(at));
        FailCounter limit = new FailCounter(at.model, deadEnds);
        Solution found = solver.findLexOptimalSolution(at.costs(), false, limit);
        boolean whole = !limit.isMet();
        return new Attempt(found == null ? null : at.schedule(found), whole);
    }

    private static void keep(ArrivalModel at, Schedule known, Set<Integer> free) {
        for (int one = 0; one < at.size; one++) {
            if (free.contains(one)) {
                continue;
            }
            int tank = known.tank().get(one);
            if (tank >= 0) {
                at.tank[one].eq(tank).post();
            }
            for (int other = 0; other < at.size; other++) {
                if (other == one || free.contains(other)) {
                    continue;
                }
                int apart = known.out().get(other) - known.out().get(one);
                if (apart > 0) {
                    at.before[one][other].eq(1).post();
                } else if (apart == 0) {
                    at.sameDay[one][other].eq(1).post();
                }
            }
        }
    }
}
