package org.tidewright.web.page;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.tidewright.husbandry.advice.Figure;
import org.tidewright.husbandry.advice.Measure;
import org.tidewright.husbandry.advice.Source;
import org.tidewright.husbandry.livestock.Animals;
import org.tidewright.husbandry.livestock.Call;
import org.tidewright.husbandry.livestock.Finding;
import org.tidewright.husbandry.livestock.Home;
import org.tidewright.husbandry.livestock.Verdict;
import org.tidewright.plan.model.UnitSystem;
import org.tidewright.web.drawing.GrowthDrawing;

/**
 * A verdict as a page shows it.
 *
 * @param mark which of the discs
 * @param becomes what would turn it into a yes
 * @param drawing the candidate in the display, to scale; null of what is no fish
 */
public record VerdictPart(
        String common,
        String scientific,
        String taken,
        String word,
        String mark,
        Markup lead,
        List<Markup> becomes,
        List<Reason> reasons,
        @Nullable Markup drawing,
        List<String> cautions,
        List<Source> sources) {

    /** A finding. */
    public record Reason(String mark, String label, boolean holds, Markup what, Markup why) {}

    /** Verdicts of one list, each with sources of its own. */
    static List<VerdictPart> of(List<Verdict> verdicts, Home home, UnitSystem units) {
        List<VerdictPart> parts = new ArrayList<>();
        for (int i = 0; i < verdicts.size(); i++) {
            parts.add(of(verdicts.get(i), i == 0 ? "" : String.valueOf(i + 1), home, units));
        }
        return parts;
    }

    private static VerdictPart of(Verdict verdict, String suffix, Home home, UnitSystem units) {
        Animals candidate = verdict.candidate();
        return new VerdictPart(
                candidate.species().name().common(),
                candidate.species().name().scientific(),
                taken(candidate, units),
                word(verdict.call()),
                mark(verdict.call()),
                lead(verdict, units),
                verdict.becomes().stream()
                        .map(change -> SentenceMarkup.of(change.withoutSources(), units))
                        .toList(),
                verdict.findings().stream()
                        .map(finding -> reason(finding, suffix, units))
                        .toList(),
                candidate.isFish()
                        ? new Markup(GrowthDrawing.of(candidate, home.length(), home.height(), units))
                        : null,
                verdict.cautions(),
                verdict.sources().stream()
                        .map(source ->
                                new Source(source.key() + suffix, source.what(), source.basis(), source.detail()))
                        .toList());
    }

    /** The word stands above it: the first reason, or that nothing speaks against it. */
    private static Markup lead(Verdict verdict, UnitSystem units) {
        return verdict.call() == Call.YES
                ? Markup.words("Nothing that is known speaks against it.")
                : SentenceMarkup.of(verdict.findings().get(0).what().withoutSources(), units);
    }

    private static String taken(Animals candidate, UnitSystem units) {
        String count = candidate.count() == 1 ? "One" : String.valueOf(candidate.count());
        return candidate.isFish()
                ? count + ", taken at " + SentenceMarkup.plain(Figure.exact(Measure.LENGTH, candidate.length()), units)
                : count;
    }

    private static Reason reason(Finding finding, String suffix, UnitSystem units) {
        return new Reason(
                mark(finding.call()),
                label(finding.call()),
                finding.call() == Call.YES,
                SentenceMarkup.of(finding.what().withSources(key -> key + suffix), units),
                SentenceMarkup.of(finding.why().withSources(key -> key + suffix), units));
    }

    static String word(Call call) {
        return switch (call) {
            case YES, MIND -> "Yes";
            case NOT_YET -> "Not yet";
            case NO -> "No";
        };
    }

    static String mark(Call call) {
        return switch (call) {
            case YES, MIND -> "holds";
            case NOT_YET -> "close";
            case NO -> "fails";
        };
    }

    static String label(Call call) {
        return switch (call) {
            case YES -> "holds";
            case MIND -> "mind this";
            case NOT_YET -> "not yet";
            case NO -> "no";
        };
    }
}
