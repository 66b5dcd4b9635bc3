package org.tidewright.husbandry.arrival.search;

import java.util.Arrays;
import org.chocosolver.solver.constraints.Constraint;
import org.chocosolver.solver.constraints.Propagator;
import org.chocosolver.solver.constraints.PropagatorPriority;
import org.chocosolver.solver.exception.ContradictionException;
import org.chocosolver.solver.variables.IntVar;
import org.chocosolver.util.ESat;

/**
 * Tells the solver what no order of the batches that are left can better: the other rules look at two batches at a time, and
 * would not see a queue. It follows from them, and forbids no plan.
 */
@SuppressWarnings("serial") // the solver's propagators are never written out
final class QueueBound extends Propagator<IntVar> {
    private final ArrivalModel at;

    private QueueBound(ArrivalModel at) {
        super(at.watched(), PropagatorPriority.VERY_SLOW, false);
        this.at = at;
    }

    static Constraint of(ArrivalModel at) {
        return new Constraint("queue", new QueueBound(at));
    }

    @Override
    public void propagate(int mask) throws ContradictionException {
        Decided decided = Decided.of(at);
        int[] days = EarliestDays.of(at.puzzle, decided);
        int[] soonest = decided.rest.stream()
                .mapToInt(batch -> at.out[batch].getLB())
                .sorted()
                .toArray();
        int sum = decided.sum + decided.never * at.late;
        int inTime = 0;
        for (int i = 0; i < days.length; i++) {
            days[i] = Math.max(days[i], soonest[i]);
            sum += Math.min(days[i], at.late);
            inTime += days[i] <= at.puzzle.lastDay() ? 1 : 0;
        }
        at.dropped.updateLowerBound(at.size - decided.count - inTime, this);
        at.sum.updateLowerBound(sum, this);
        int least = at.size - at.dropped.getUB() - decided.count;
        if (least > 0) {
            at.last.updateLowerBound(Arrays.stream(days).limit(least).max().orElse(0), this);
        }
        if (least == days.length) {
            at.last.updateLowerBound(EarliestDays.lastStay(at.puzzle, decided), this);
        }
    }

    /** The rules it follows from say whether an answer is sound. */
    @Override
    public ESat isEntailed() {
        return ESat.TRUE;
    }
}
