package org.tidewright.husbandry.livestock;

import java.util.ArrayList;
import java.util.List;

/** Judges several candidates that are to come together: each that may come counts as a companion of those after it. */
public final class ShoppingList {
    private ShoppingList() {}

    public static List<Verdict> judge(List<Animals> candidates, Home home, List<Animals> residents) {
        List<Animals> company = new ArrayList<>(residents);
        List<Verdict> verdicts = new ArrayList<>();
        for (Animals candidate : candidates) {
            Verdict verdict = Verdict.of(candidate, home, company);
            verdicts.add(verdict);
            if (verdict.call() != Call.NO) {
                company.add(candidate);
            }
        }
        return List.copyOf(verdicts);
    }
}
