package org.tidewright.app.cli;

import java.util.List;
import org.tidewright.husbandry.advice.Figure;
import org.tidewright.husbandry.advice.FigureText;
import org.tidewright.husbandry.advice.Measure;
import org.tidewright.husbandry.livestock.Animals;
import org.tidewright.husbandry.livestock.Call;
import org.tidewright.husbandry.livestock.Community;
import org.tidewright.husbandry.livestock.Finding;
import org.tidewright.husbandry.livestock.Verdict;
import org.tidewright.plan.model.UnitSystem;

/** Verdicts on a terminal. */
final class ConsiderPrint {
    private static final String INDENT = "            ";

    private ConsiderPrint() {}

    static void verdicts(Prose prose, String system, Community community, List<Verdict> verdicts, UnitSystem units) {
        prose.line(system);
        for (Verdict verdict : verdicts) {
            prose.blank();
            prose.line(title(verdict.candidate(), units));
            prose.paragraph(verdict.lead().text(units));
            verdict.becomes().forEach(change -> prose.paragraph("  It becomes yes: ", "  ", change.text(units)));
            prose.blank();
            for (Finding finding : verdict.findings()) {
                prose.paragraph(
                        mark(finding.call()),
                        INDENT,
                        finding.what().text(units) + " " + finding.why().text(units) + keys(finding));
            }
            prose.blank();
            Listing.cautions(prose, verdict.cautions());
            Listing.lettered(prose, verdict.sources());
        }
        if (!community.unknown().isEmpty()) {
            prose.blank();
            prose.paragraph(
                    "– ",
                    "  ",
                    "Not judged with them, because no species goes by that name: "
                            + String.join(", ", community.unknown())
                            + ". Give their species in the plan.");
        }
    }

    private static String title(Animals candidate, UnitSystem units) {
        String length = candidate.isFish()
                ? ", at "
                        + FigureText.of(Figure.exact(Measure.LENGTH, candidate.length()), units)
                                .line()
                : "";
        String count = candidate.count() == 1 ? "" : candidate.count() + " × ";
        return count + candidate.species().name().common() + " ("
                + candidate.species().name().scientific() + ")" + length;
    }

    private static String keys(Finding finding) {
        return finding.sources().isEmpty() ? "" : " [" + String.join(", ", finding.sources()) + "]";
    }

    private static String mark(Call call) {
        return switch (call) {
            case YES -> "● holds     ";
            case MIND -> "● mind      ";
            case NOT_YET -> "◐ not yet   ";
            case NO -> "○ no        ";
        };
    }
}
