package org.tidewright.husbandry.advice;

import java.util.List;

/**
 * The checks of a plan.
 *
 * @param lead the sentence a page opens with
 * @param sources every source the checks refer to
 * @param cautions whose word comes first where a check could lead somebody to act
 */
public record Report(Sentence lead, List<Check> checks, List<Source> sources, List<String> cautions) {
    /** Whether no check fails. */
    public boolean holds() {
        return checks.stream().noneMatch(check -> check.holding() == Holding.FAILS);
    }
}
