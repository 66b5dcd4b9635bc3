package org.tidewright.husbandry.advice;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * One thing that must hold of a plan, and whether it does.
 *
 * @param id stable name in snake case
 * @param title a few words
 * @param holding how it came out
 * @param margin distance to the limit, positive on the safe side; null where the check has none
 * @param shown the figure to show beside the title
 * @param sentence act first where there is one, then the reason
 * @param sources keys of the sources it used
 */
public record Check(
        String id,
        String title,
        Holding holding,
        @Nullable Figure margin,
        Sentence shown,
        Sentence sentence,
        List<String> sources) {}
