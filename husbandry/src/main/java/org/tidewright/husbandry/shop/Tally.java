package org.tidewright.husbandry.shop;

import java.util.ArrayList;
import java.util.List;
import org.tidewright.husbandry.shop.BadSign.Weight;

/**
 * What the signs that were seen add up to: one that says “leave it” decides, questions wait. The page's script says the same
 * in the same words.
 */
public final class Tally {
    /** So many are named, the others counted. */
    static final int NAMED = 4;

    private static final String IT = "it ";

    private Tally() {}

    /** {@code Leave it: it does not eat and breathes fast.} */
    public static String sentence(List<BadSign> seen) {
        List<String> leave = clauses(seen, Weight.LEAVE);
        if (!leave.isEmpty()) {
            return "Leave it: " + joined(leave) + ".";
        }
        List<String> ask = clauses(seen, Weight.ASK);
        return ask.isEmpty()
                ? "No bad sign ticked: look for each, and ask for what you cannot see."
                : "Ask before you buy: " + joined(ask) + ".";
    }

    private static List<String> clauses(List<BadSign> seen, Weight weight) {
        return seen.stream()
                .filter(sign -> sign.weight() == weight)
                .map(BadSign::clause)
                .toList();
    }

    /** Those of “it” first and under one “it”. */
    private static String joined(List<String> clauses) {
        List<String> ordered = new ArrayList<>();
        for (String clause : clauses) {
            if (clause.startsWith(IT)) {
                ordered.add(ordered.isEmpty() ? clause : clause.substring(IT.length()));
            }
        }
        clauses.stream().filter(clause -> !clause.startsWith(IT)).forEach(ordered::add);
        if (ordered.size() > NAMED) {
            int more = ordered.size() - NAMED + 1;
            ordered = new ArrayList<>(ordered.subList(0, NAMED - 1));
            ordered.add(more + " more");
        }
        int last = ordered.size() - 1;
        return last == 0 ? ordered.get(0) : String.join(", ", ordered.subList(0, last)) + " and " + ordered.get(last);
    }
}
