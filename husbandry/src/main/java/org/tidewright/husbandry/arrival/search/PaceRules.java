package org.tidewright.husbandry.arrival.search;

import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.chocosolver.solver.Model;
import org.chocosolver.solver.variables.BoolVar;
import org.chocosolver.solver.variables.IntVar;
import org.tidewright.husbandry.arrival.search.Puzzle.Batch;

/** What the display takes on one day: its spare, or what the animals that live there by then let it take. */
final class PaceRules {
    private PaceRules() {}

    static void post(ArrivalModel at) {
        int[] masses = at.masses();
        int[] welcomes = at.puzzle.batches().stream().mapToInt(Batch::welcome).toArray();
        for (int batch = 0; batch < at.size; batch++) {
            addition(at, batch, masses, welcomes);
        }
    }

    private static void addition(ArrivalModel at, int batch, int[] masses, int[] welcomes) {
        Model model = at.model;
        IntVar[] then = ArrivalModel.towards(at.sameDay, batch);
        IntVar[] earlier = ArrivalModel.towards(at.before, batch);
        BoolVar small = model.scalar(then, masses, "<=", at.puzzle.spare()).reify();
        IntVar[] all = Stream.of(then, earlier).flatMap(Stream::of).toArray(IntVar[]::new);
        int[] weights = IntStream.concat(
                        IntStream.of(masses), IntStream.of(welcomes).map(welcome -> -welcome))
                .toArray();
        BoolVar carried = model.scalar(all, weights, "<=", at.puzzle.welcome()).reify();
        model.or(small, carried, at.placed[batch].not()).post();
    }
}
