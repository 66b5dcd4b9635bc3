package org.tidewright.app.cli;

import java.util.Locale;
import org.tidewright.husbandry.advice.Assumption;
import org.tidewright.husbandry.advice.Figure;
import org.tidewright.husbandry.advice.FigureText;
import org.tidewright.husbandry.rehearsal.Crossing;
import org.tidewright.husbandry.rehearsal.OutageReport;
import org.tidewright.husbandry.rehearsal.Trace;
import org.tidewright.plan.model.UnitSystem;

/** A rehearsed power cut on a terminal. */
final class OutagePrint {
    private OutagePrint() {}

    /** The answer alone: what happens and when. */
    static void answer(Prose prose, OutageReport report, UnitSystem told) {
        prose.line(report.plan().name() + ", a power cut of "
                + FigureText.number(report.order().hours(), 0) + " h");
        prose.blank();
        prose.paragraph(report.lead().text(told));
        prose.blank();
        for (var remark : report.remarks()) {
            prose.paragraph("– ", "  ", remark.text(told));
        }
        prose.blank();
    }

    /** The answer, every limit, what was assumed, and the sources. */
    static void whole(Prose prose, OutageReport report, UnitSystem told) {
        answer(prose, report, told);
        prose.line(String.format(
                Locale.ROOT, "%-24s %-20s %-22s %s", "Quantity", "limit", "reached after", "of 100 draws"));
        for (Crossing crossing : report.crossings()) {
            Trace trace = report.traces().stream()
                    .filter(candidate -> candidate.id().equals(crossing.trace()))
                    .findFirst()
                    .orElseThrow();
            String limit = (crossing.limit().forbiddenBelow() ? "under " : "over ")
                    + FigureText.of(
                                    Figure.exact(
                                            trace.measure(), crossing.limit().value()),
                                    told)
                            .line()
                    + " " + crossing.limit().words();
            prose.line(String.format(
                    Locale.ROOT,
                    "%-24s %-20s %-22s %3.0f",
                    trace.title(),
                    limit,
                    FigureText.of(crossing.after(), told).line(),
                    100 * crossing.share()));
        }
        prose.blank();
        prose.line("What was not known exactly and mattered most (usual value, 5th and 95th of 100 draws)");
        for (Assumption assumption : report.assumptions()) {
            prose.paragraph(
                    "  ",
                    "    ",
                    assumption.name() + ": "
                            + FigureText.of(assumption.figure(), told).line() + ". "
                            + assumption.basis().words() + ": " + assumption.detail() + ".");
        }
        prose.blank();
        Listing.sources(prose, report.sources());
        Listing.cautions(prose, report.cautions());
    }
}
