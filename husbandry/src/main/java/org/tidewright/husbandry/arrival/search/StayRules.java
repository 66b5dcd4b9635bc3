package org.tidewright.husbandry.arrival.search;

import java.util.stream.IntStream;
import org.chocosolver.solver.Model;
import org.chocosolver.solver.variables.BoolVar;
import org.chocosolver.solver.variables.IntVar;
import org.tidewright.husbandry.arrival.search.Puzzle.Batch;
import org.tidewright.husbandry.arrival.search.Puzzle.Tank;

/** Stays in quarantine tanks: how long, one after the other, what a tank holds, who shares one. */
final class StayRules {
    private final ArrivalModel at;
    private final Model model;
    private final Puzzle puzzle;

    private StayRules(ArrivalModel at) {
        this.at = at;
        this.model = at.model;
        this.puzzle = at.puzzle;
    }

    static void post(ArrivalModel at) {
        StayRules rules = new StayRules(at);
        for (int batch = 0; batch < at.size; batch++) {
            rules.where(batch);
        }
        for (int one = 0; one < at.size; one++) {
            at.together[one][one] = at.model.boolVar(true);
            for (int other = one + 1; other < at.size; other++) {
                rules.company(one, other);
            }
        }
        for (int batch = 0; batch < at.size; batch++) {
            rules.room(batch);
        }
    }

    /** A batch's tank, or the number of a place of its own if it has none. */
    private void where(int batch) {
        Batch each = puzzle.batches().get(batch);
        int nowhere = puzzle.tanks().size() + batch;
        if (each.stay() != null) {
            at.tank[batch] = model.intVar(each.stay().tank());
            longEnough(batch, each.stay().tank(), at.placed[batch]);
        } else if (each.straight()) {
            at.tank[batch] = model.intVar(nowhere);
            model.arithm(at.in[batch], "=", at.out[batch]).post();
        } else {
            int[] large = IntStream.range(0, puzzle.tanks().size())
                    .filter(tank -> puzzle.tanks().get(tank).room() >= each.mass())
                    .toArray();
            at.tank[batch] = model.intVar(
                    "tank" + batch,
                    IntStream.concat(IntStream.of(large), IntStream.of(nowhere)).toArray());
            model.reifXrelC(at.tank[batch], "<", nowhere, at.placed[batch]);
            for (int tank : large) {
                BoolVar here = model.boolVar();
                model.reifyXeqC(at.tank[batch], tank, here);
                model.impXrelC(at.in[batch], ">=", puzzle.tanks().get(tank).free(), here);
                longEnough(batch, tank, here);
            }
        }
    }

    private void longEnough(int batch, int tank, BoolVar here) {
        model.impXrelYC(at.out[batch], ">=", at.in[batch], puzzle.need(batch, tank), here);
    }

    private void company(int one, int other) {
        BoolVar shared = model.boolVar();
        model.reifXrelYC(at.tank[one], "=", at.tank[other], 0, shared);
        BoolVar together = model.boolVar();
        model.and(shared, at.sameDay[one][other]).reifyWith(together);
        at.together[one][other] = together;
        at.together[other][one] = together;
        boolean happened = puzzle.batches().get(one).stay() != null
                && puzzle.batches().get(other).stay() != null;
        if (!happened) {
            model.impXrelYC(at.in[one], "=", at.in[other], 0, together);
            if (puzzle.keptApart(one, other)) {
                together.eq(0).post();
            }
        }
        oneAfterTheOther(one, other, shared);
        oneAfterTheOther(other, one, shared);
    }

    private void oneAfterTheOther(int first, int second, BoolVar shared) {
        BoolVar follows = model.boolVar();
        model.and(shared, at.before[first][second]).reifyWith(follows);
        int least = puzzle.tanks().stream().mapToInt(Tank::dry).min().orElse(0);
        model.impXrelYC(at.in[second], ">=", at.out[first], least, follows);
        for (int tank = 0; tank < puzzle.tanks().size(); tank++) {
            int dry = puzzle.tanks().get(tank).dry();
            if (dry > least && at.tank[first].contains(tank) && at.tank[second].contains(tank)) {
                BoolVar here = model.boolVar();
                model.reifyXeqC(at.tank[first], tank, here);
                BoolVar followsHere = model.boolVar();
                model.and(follows, here).reifyWith(followsHere);
                model.impXrelYC(at.in[second], ">=", at.out[first], dry, followsHere);
            }
        }
    }

    /** Told of every batch of a stay but those of one that has begun: it is as it is. */
    private void room(int batch) {
        if (puzzle.batches().get(batch).stay() != null
                || puzzle.batches().get(batch).straight()) {
            return;
        }
        BoolVar[] stay = ArrivalModel.towards(at.together, batch);
        int[] ones = IntStream.range(0, at.size).map(each -> 1).toArray();
        for (int tank = 0; tank < puzzle.tanks().size(); tank++) {
            if (at.tank[batch].contains(tank)) {
                Tank each = puzzle.tanks().get(tank);
                BoolVar here = model.boolVar();
                model.reifyXeqC(at.tank[batch], tank, here);
                here.imp(sumAtMost(stay, at.masses(), each.room())).post();
                here.imp(sumAtMost(stay, ones, each.places())).post();
            }
        }
    }

    private BoolVar sumAtMost(BoolVar[] which, int[] weights, int most) {
        IntVar[] terms = which;
        return model.scalar(terms, weights, "<=", most).reify();
    }
}
