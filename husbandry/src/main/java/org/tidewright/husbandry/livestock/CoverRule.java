package org.tidewright.husbandry.livestock;

import java.util.List;
import org.tidewright.husbandry.advice.Sentence;
import org.tidewright.plan.model.Cover;

/** Fish that jump need something over the water. */
final class CoverRule implements Rule {
    private static final int JUMPER = 2;

    @Override
    public List<Finding> judge(Situation seen) {
        if (!seen.candidate().isFish()
                || seen.candidate().fish().space().jumps() < JUMPER
                || seen.home().cover() != Cover.OPEN) {
            return List.of();
        }
        return List.of(Finding.of(
                        "jump",
                        Call.NOT_YET,
                        Sentence.of("It jumps, and your tank is open."),
                        Sentence.of(
                                "A frightened one goes through any gap wider than a finger.",
                                Facts.source(
                                        seen,
                                        "Jumping",
                                        seen.candidate().fish().space().source())))
                .becomes(Sentence.of("Lay a net or mesh over the tank first, with openings of 6 mm or less.")));
    }
}
