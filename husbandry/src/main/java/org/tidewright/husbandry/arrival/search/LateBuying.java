package org.tidewright.husbandry.arrival.search;

import java.util.List;
import java.util.stream.IntStream;

/** Moves the beginning of stays, not their ends: nobody sits in a bare tank longer than need be. */
public final class LateBuying {
    private LateBuying() {}

    /** The same days in the display, each stay begun as late as its quarantine and the months' money let it. */
    public static Schedule of(Puzzle puzzle, Schedule schedule) {
        Schedule late = schedule;
        for (int batch : schedule.placed()) {
            List<Integer> stay = schedule.stay(batch);
            boolean first = stay.get(0) == batch;
            if (first && schedule.tank().get(batch) >= 0 && !happened(puzzle, stay)) {
                late = later(puzzle, late, stay);
            }
        }
        return late;
    }

    private static boolean happened(Puzzle puzzle, List<Integer> stay) {
        return stay.stream().anyMatch(each -> puzzle.batches().get(each).stay() != null);
    }

    private static Schedule later(Puzzle puzzle, Schedule schedule, List<Integer> stay) {
        int batch = stay.get(0);
        int tank = schedule.tank().get(batch);
        int out = schedule.out().get(batch);
        int in = schedule.in().get(batch);
        int need = stay.stream().mapToInt(each -> puzzle.need(each, tank)).max().orElse(0);
        return IntStream.iterate(out - need, day -> day > in, day -> day - 1)
                .mapToObj(day -> schedule.with(stay, tank, day, out))
                .filter(each -> Rulebook.broken(puzzle, each).isEmpty())
                .findFirst()
                .orElse(schedule);
    }
}
