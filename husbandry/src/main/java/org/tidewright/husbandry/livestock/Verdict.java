package org.tidewright.husbandry.livestock;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.tidewright.husbandry.advice.Sentence;
import org.tidewright.husbandry.advice.Source;
import org.tidewright.husbandry.advice.Sources;
import org.tidewright.husbandry.burden.Burden;

/**
 * Whether a candidate may come.
 *
 * @param lead the answer in a sentence
 * @param becomes what would turn a “not yet” into a yes, one sentence each; empty otherwise
 * @param findings the worst first
 * @param cautions at the act of bringing it home and in
 */
public record Verdict(
        Animals candidate,
        Call call,
        Sentence lead,
        List<Sentence> becomes,
        List<Finding> findings,
        List<String> cautions,
        List<Source> sources) {
    public Verdict {
        becomes = List.copyOf(becomes);
        findings = List.copyOf(findings);
        cautions = List.copyOf(cautions);
        sources = List.copyOf(sources);
    }

    /**
     * By all rules.
     *
     * @param burden what it would do to the water; null where the twin was not asked
     */
    public static Verdict of(Animals candidate, Setting setting, @Nullable Burden burden) {
        Sources sources = new Sources();
        Situation seen = new Situation(candidate, setting, burden, sources);
        List<Finding> findings = new ArrayList<>();
        Rules.ALL.forEach(rule -> findings.addAll(rule.judge(seen)));
        findings.sort(Comparator.comparing(Finding::call).reversed());
        Call call = findings.stream().map(Finding::call).reduce(Call.YES, Call::worse);
        List<Sentence> becomes = new ArrayList<>();
        if (call == Call.NOT_YET) {
            findings.stream()
                    .filter(finding -> finding.call() == Call.NOT_YET && finding.becomes() != null)
                    .map(Finding::becomes)
                    .forEach(becomes::add);
        }
        return new Verdict(
                candidate,
                call,
                lead(candidate, call, findings),
                becomes,
                findings,
                Handling.cautions(candidate),
                sources.all());
    }

    private static Sentence lead(Animals candidate, Call call, List<Finding> findings) {
        String name = candidate.species().name().common();
        return switch (call) {
            case YES -> Sentence.of("Yes: the " + name + " may come.");
            case MIND -> Sentence.of("Yes, and mind this: ", findings.get(0).what());
            case NOT_YET -> Sentence.of("Not yet: ", findings.get(0).what());
            case NO -> Sentence.of("No: ", findings.get(0).what());
        };
    }
}
