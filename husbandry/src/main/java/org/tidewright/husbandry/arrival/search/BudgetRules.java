package org.tidewright.husbandry.arrival.search;

import java.util.List;
import java.util.stream.IntStream;
import org.chocosolver.solver.Model;
import org.chocosolver.solver.variables.BoolVar;
import org.chocosolver.solver.variables.IntVar;
import org.tidewright.husbandry.arrival.search.Puzzle.Batch;
import org.tidewright.husbandry.arrival.search.Puzzle.Month;

/** What is bought in a month costs no more than its budget. */
final class BudgetRules {
    private BudgetRules() {}

    static void post(ArrivalModel at) {
        List<Month> months = at.puzzle.months();
        int[] bought = IntStream.range(0, months.isEmpty() ? 0 : at.size)
                .filter(batch -> isBought(at.puzzle.batches().get(batch)))
                .toArray();
        int[] prices = IntStream.of(bought)
                .map(batch -> at.puzzle.batches().get(batch).price())
                .toArray();
        BoolVar[][] then = new BoolVar[months.size()][bought.length];
        for (int i = 0; i < bought.length; i++) {
            month(at, bought[i], then, i);
        }
        for (int month = 0; month < months.size() && bought.length > 0; month++) {
            at.model
                    .scalar(then[month], prices, "<=", months.get(month).budget())
                    .post();
        }
    }

    private static boolean isBought(Batch batch) {
        return batch.stay() == null && batch.price() > 0;
    }

    /** The month in which a batch comes; one that is not placed comes after all months. */
    private static void month(ArrivalModel at, int batch, BoolVar[][] then, int column) {
        Model model = at.model;
        List<Month> months = at.puzzle.months();
        IntVar month = model.intVar("month" + batch, 0, months.size());
        at.month[batch] = month;
        model.reifXrelC(month, "<", months.size(), at.placed[batch]);
        for (int m = 0; m < months.size(); m++) {
            then[m][column] = model.boolVar();
            model.reifyXeqC(month, m, then[m][column]);
            if (m > 0) {
                BoolVar since = model.boolVar();
                model.reifXrelC(at.in[batch], ">=", months.get(m).from(), since);
                model.reifXrelC(month, ">=", m, since);
            }
        }
    }
}
