package org.tidewright.husbandry.arrival.search;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.chocosolver.solver.Model;
import org.chocosolver.solver.Settings;
import org.chocosolver.solver.Solution;
import org.chocosolver.solver.variables.BoolVar;
import org.chocosolver.solver.variables.IntVar;
import org.jspecify.annotations.Nullable;
import org.tidewright.husbandry.arrival.search.Puzzle.Batch;

/**
 * A puzzle told to the solver: its variables, with what makes them fit each other. The rules of each subject are posted by
 * its own class.
 *
 * <p>Batches stand in a line by the day they go into the display, those of one day by number. One that is not placed has
 * the day {@link #late}, after all days that count, and a tank that nobody else can have.
 */
final class ArrivalModel {
    final Puzzle puzzle;
    final Model model = new Model("arrivals", Settings.prod());
    final int size;

    /** A day a gap after the last. */
    final int late;

    final IntVar[] out;
    final IntVar[] in;
    final IntVar[] tank;
    final BoolVar[] placed;

    /** In which month a batch comes; null where that does not matter. */
    final @Nullable IntVar[] month;

    /** Place of each batch in the line, and the batch at each place. */
    final IntVar[] place;

    final IntVar[] line;

    /**
     * Whether a batch goes into the display at least a gap before another; on one day with it; shares its stay. Each does the
     * last two with itself.
     */
    final BoolVar[][] before;

    final BoolVar[][] sameDay;
    final BoolVar[][] together;

    /** What is to be as small as can be, the first first: see {@link Schedule#cost}. */
    final IntVar dropped;

    final IntVar last;
    final IntVar sum;
    final IntVar swapped;

    ArrivalModel(Puzzle puzzle) {
        this.puzzle = puzzle;
        size = puzzle.batches().size();
        late = puzzle.lastDay() + puzzle.gap();
        out = new IntVar[size];
        in = new IntVar[size];
        tank = new IntVar[size];
        month = new IntVar[size];
        placed = model.boolVarArray("placed", size);
        place = model.intVarArray("place", size, 0, size - 1);
        line = model.intVarArray("line", size, 0, size - 1);
        before = new BoolVar[size][size];
        sameDay = new BoolVar[size][size];
        together = new BoolVar[size][size];
        dropped = model.intVar("dropped", 0, size);
        last = model.intVar("last", 0, puzzle.lastDay(), true);
        sum = model.intVar("sum", 0, late * size, true);
        swapped = model.intVar("swapped", 0, size * size);
        for (int batch = 0; batch < size; batch++) {
            days(batch);
        }
        model.inverseChanneling(line, place).post();
        for (int one = 0; one < size; one++) {
            before[one][one] = model.boolVar(false);
            sameDay[one][one] = model.boolVar(true);
            for (int other = one + 1; other < size; other++) {
                inLine(one, other);
            }
        }
        StayRules.post(this);
        PaceRules.post(this);
        BudgetRules.post(this);
        OrderRules.post(this);
        cost();
        model.post(QueueBound.of(this));
    }

    private void days(int batch) {
        Batch each = puzzle.batches().get(batch);
        int soonest = Math.min(late, Math.max(puzzle.firstAddition(), each.intoDisplay()));
        out[batch] = model.intVar("out" + batch, soonest, late, true);
        in[batch] = each.stay() == null
                ? model.intVar("in" + batch, Math.min(late, Math.max(0, each.fromShop())), late, true)
                : model.intVar(each.stay().since());
        model.impXrelC(out[batch], "<=", puzzle.lastDay(), placed[batch]);
        model.impXrelC(out[batch], "=", late, placed[batch].not());
        if (each.stay() == null) {
            model.impXrelC(in[batch], "=", late, placed[batch].not());
        }
    }

    private void inLine(int one, int other) {
        BoolVar ahead = model.boolVar();
        model.reifXrelYC(place[one], "<", place[other], 0, ahead);
        before[one][other] = model.boolVar();
        before[other][one] = model.boolVar();
        sameDay[one][other] = model.boolVar();
        sameDay[other][one] = sameDay[one][other];
        model.sum(new BoolVar[] {before[one][other], before[other][one], sameDay[one][other]}, "=", 1)
                .post();
        model.impXrelYC(out[one], "<=", out[other], -puzzle.gap(), before[one][other]);
        model.impXrelYC(out[other], "<=", out[one], -puzzle.gap(), before[other][one]);
        model.impXrelYC(out[one], "=", out[other], 0, sameDay[one][other]);
        model.arithm(before[one][other], "<=", ahead).post();
        model.arithm(sameDay[one][other], "<=", ahead).post();
        model.arithm(before[other][one], "<=", ahead.not()).post();
    }

    private void cost() {
        model.sum(placed, "=", model.intView(-1, dropped, size)).post();
        for (int batch = 0; batch < size; batch++) {
            model.impXrelYC(last, ">=", out[batch], 0, placed[batch]);
        }
        model.sum(out, "=", sum).post();
        List<BoolVar> wrong = new ArrayList<>();
        for (int one = 0; one < size; one++) {
            for (int other = 0; other < size; other++) {
                if (puzzle.batches().get(one).rank()
                        < puzzle.batches().get(other).rank()) {
                    wrong.add(both(before[other][one], placed[one]));
                }
            }
        }
        model.sum(wrong.toArray(BoolVar[]::new), "=", swapped).post();
    }

    /** True where two others are. */
    BoolVar both(BoolVar one, BoolVar other) {
        BoolVar both = model.boolVar();
        model.and(one, other).reifyWith(both);
        return both;
    }

    /** Masses of the batches, in grains. */
    int[] masses() {
        return puzzle.batches().stream().mapToInt(Batch::mass).toArray();
    }

    /** A column of a table of pairs: which batches are so towards one. */
    static BoolVar[] towards(BoolVar[][] pairs, int batch) {
        return Arrays.stream(pairs).map(row -> row[batch]).toArray(BoolVar[]::new);
    }

    /** What is to be as small as can be, the first first. */
    IntVar[] costs() {
        return new IntVar[] {dropped, last, sum, swapped};
    }

    /** The answer of a solution. */
    Schedule schedule(Solution found) {
        List<Integer> tanks = new ArrayList<>();
        List<Integer> ins = new ArrayList<>();
        List<Integer> outs = new ArrayList<>();
        for (int batch = 0; batch < size; batch++) {
            boolean has = found.getIntVal(placed[batch]) == 1;
            int where = found.getIntVal(tank[batch]);
            tanks.add(has && where < puzzle.tanks().size() ? where : -1);
            ins.add(has ? found.getIntVal(in[batch]) : Schedule.NEVER);
            outs.add(has ? found.getIntVal(out[batch]) : Schedule.NEVER);
        }
        return new Schedule(tanks, ins, outs);
    }

    /** All whole-number variables that the bound looks at. */
    IntVar[] watched() {
        List<IntVar> watched = new ArrayList<>();
        watched.addAll(Arrays.asList(line));
        watched.addAll(Arrays.asList(tank));
        watched.addAll(Arrays.asList(out));
        watched.add(dropped);
        watched.add(last);
        watched.add(sum);
        return watched.toArray(IntVar[]::new);
    }
}
