package org.tidewright.husbandry.arrival.search;

import java.util.Arrays;
import java.util.stream.IntStream;
import org.chocosolver.solver.search.strategy.decision.Decision;
import org.chocosolver.solver.search.strategy.strategy.AbstractStrategy;
import org.chocosolver.solver.variables.BoolVar;
import org.chocosolver.solver.variables.IntVar;
import org.jspecify.annotations.Nullable;
import org.tidewright.husbandry.arrival.search.Puzzle.Tank;

/**
 * The order in which the solver decides: who goes into the display next, with the one before or after it, out of which tank,
 * bought in which month; when all that is settled, every day as early as it can be. What is tried first is what keeps the
 * line shortest now.
 */
final class InTurn extends AbstractStrategy<IntVar> {
    private final ArrivalModel at;
    private final IntVar[] days;

    InTurn(ArrivalModel at) {
        super(at.line);
        this.at = at;
        days = IntStream.range(0, at.size)
                .mapToObj(i -> new IntVar[] {at.in[i], at.out[i]})
                .flatMap(Arrays::stream)
                .toArray(IntVar[]::new);
    }

    @Override
    public @Nullable Decision<IntVar> getDecision() {
        for (int place = 0; place < at.size; place++) {
            Decision<IntVar> decision = decide(place);
            if (decision != null) {
                return decision;
            }
        }
        for (IntVar day : days) {
            if (!day.isInstantiated()) {
                return makeIntDecision(day, day.getLB());
            }
        }
        for (IntVar rest : at.model.retrieveIntVars(true)) {
            if (!rest.isInstantiated()) {
                return makeIntDecision(rest, rest.getLB());
            }
        }
        return null;
    }

    private @Nullable Decision<IntVar> decide(int place) {
        if (!at.line[place].isInstantiated()) {
            return makeIntDecision(at.line[place], soonest(at.line[place]));
        }
        int batch = at.line[place].getValue();
        if (!at.placed[batch].isInstantiated()) {
            return makeIntDecision(at.placed[batch], 1);
        }
        if (place > 0) {
            int head = at.line[place - 1].getValue();
            BoolVar joins = at.sameDay[head][batch];
            if (!joins.isInstantiated()) {
                return makeIntDecision(joins, at.out[batch].getLB() <= at.out[head].getLB() ? 1 : 0);
            }
        }
        if (!at.tank[batch].isInstantiated()) {
            return makeIntDecision(at.tank[batch], soonestTank(batch, place));
        }
        IntVar month = at.month[batch];
        return month == null || month.isInstantiated() ? null : makeIntDecision(month, month.getLB());
    }

    /** Of the batches that may be next the one that can be soonest. */
    private int soonest(IntVar next) {
        int best = next.getLB();
        for (int batch = best; batch <= next.getUB(); batch = next.nextValue(batch)) {
            if (at.out[batch].getLB() < at.out[best].getLB()) {
                best = batch;
            }
        }
        return best;
    }

    /** Of the tanks that a batch may have the one from which it can go into the display first. */
    private int soonestTank(int batch, int place) {
        IntVar tank = at.tank[batch];
        int best = tank.getLB();
        int bestDay = Integer.MAX_VALUE;
        for (int each = tank.getLB(); each < at.puzzle.tanks().size(); each = tank.nextValue(each)) {
            int day = begins(batch, each, place) + at.puzzle.need(batch, each);
            if (day < bestDay) {
                best = each;
                bestDay = day;
            }
        }
        return best;
    }

    /** When the stay begins: with those of that day that are in the tank, or after the last. */
    private int begins(int batch, int tank, int place) {
        Tank each = at.puzzle.tanks().get(tank);
        int day = Math.max(each.free(), at.in[batch].getLB());
        for (int earlier = 0; earlier < place; earlier++) {
            int other = at.line[earlier].getValue();
            if (at.tank[other].isInstantiatedTo(tank)) {
                boolean joins = at.sameDay[other][batch].isInstantiatedTo(1);
                day = Math.max(day, joins ? at.in[other].getLB() : at.out[other].getLB() + each.dry());
            }
        }
        return day;
    }
}
