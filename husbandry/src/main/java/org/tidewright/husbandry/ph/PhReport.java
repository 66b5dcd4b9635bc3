package org.tidewright.husbandry.ph;

import java.util.List;
import org.tidewright.husbandry.advice.Advice;
import org.tidewright.husbandry.advice.Sentence;
import org.tidewright.husbandry.advice.Source;

/**
 * All that is told of a pH.
 *
 * @param lead what to do, then why
 * @param doubt how sure the reading is, and which would tell
 * @param atRest what the meter would read at rest with air
 * @param levers what each would do, with what to mind while doing it
 * @param balances how far they are to be trusted
 * @param cups how the test with two cups is done; its sources are lettered with all others
 * @param figures the numbers to show beside the words
 * @param working how the numbers came about, a step each
 * @param sources every source it refers to
 */
public record PhReport(
        Sentence lead,
        Sentence doubt,
        Sentence atRest,
        List<LeverTold> levers,
        Sentence balances,
        Advice cups,
        List<Advice.Told> figures,
        List<Sentence> working,
        List<Source> sources) {
    /** A lever, what it would do, and what to mind while doing it. */
    public record LeverTold(Lever lever, Sentence sentence, List<String> cautions) {}

    public PhReport {
        levers = List.copyOf(levers);
        figures = List.copyOf(figures);
        working = List.copyOf(working);
        sources = List.copyOf(sources);
    }
}
