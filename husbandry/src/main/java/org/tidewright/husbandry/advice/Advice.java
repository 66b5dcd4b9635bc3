package org.tidewright.husbandry.advice;

import java.util.List;

/**
 * The answer to one question.
 *
 * @param lead what to do, then why
 * @param remarks what else belongs to it
 * @param figures the numbers to show beside the words
 * @param working how the numbers came about, a step each, for whoever wants to reckon it again
 * @param cautions what to mind while doing it
 * @param sources every source it refers to
 */
public record Advice(
        Sentence lead,
        List<Sentence> remarks,
        List<Told> figures,
        List<Sentence> working,
        List<String> cautions,
        List<Source> sources) {
    /**
     * A number with its name.
     *
     * @param name what it is, in words
     * @param source key of its source; empty where the sentence names it
     */
    public record Told(String name, Figure figure, String source) {}

    public Advice {
        remarks = List.copyOf(remarks);
        figures = List.copyOf(figures);
        working = List.copyOf(working);
        cautions = List.copyOf(cautions);
        sources = List.copyOf(sources);
    }
}
