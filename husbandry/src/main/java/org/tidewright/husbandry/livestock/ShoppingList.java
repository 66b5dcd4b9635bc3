package org.tidewright.husbandry.livestock;

import java.util.ArrayList;
import java.util.List;
import org.tidewright.husbandry.burden.Burden;

/** Judges several candidates that are to come together: each that may come counts as a companion of those after it. */
public final class ShoppingList {
    private ShoppingList() {}

    /** By all rules; the twin, which takes a while, is not asked of what may not come anyway. */
    public static List<Verdict> judge(List<Animals> candidates, Setting setting, Water water) {
        List<Animals> coming = new ArrayList<>();
        List<Verdict> verdicts = new ArrayList<>();
        for (Animals candidate : candidates) {
            Setting joined = setting.joinedBy(coming);
            Verdict verdict = Verdict.of(candidate, joined, null);
            if (verdict.call() != Call.NO) {
                Burden burden = water.with(candidate, List.copyOf(coming)).orElse(null);
                verdict = burden == null ? verdict : Verdict.of(candidate, joined, burden);
                coming.add(candidate);
            }
            verdicts.add(verdict);
        }
        return List.copyOf(verdicts);
    }

    /** By all rules that need no run of the twin. */
    public static List<Verdict> judge(List<Animals> candidates, Setting setting) {
        return judge(candidates, setting, Water.NOT_ASKED);
    }
}
