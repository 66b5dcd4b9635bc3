package org.tidewright.app.cli;

import java.util.Optional;
import org.tidewright.husbandry.advice.FigureText;
import org.tidewright.husbandry.advice.Sentence;
import org.tidewright.husbandry.advice.Source;
import org.tidewright.husbandry.quantity.Fork;
import org.tidewright.husbandry.quantity.QuantityStudy;
import org.tidewright.husbandry.quantity.Told;
import org.tidewright.husbandry.quantity.WaterStudy;
import org.tidewright.plan.method.WaterQuantity;
import org.tidewright.plan.model.UnitSystem;

/** What is known of the water, on a terminal. */
final class AdvisePrint {
    private static final String COLUMNS = "%-12s %-20s %-24s %s";

    private AdvisePrint() {}

    static void study(Prose prose, String system, WaterStudy study, Optional<WaterQuantity> asked, UnitSystem units) {
        if (study.quantities().isEmpty()) {
            prose.paragraph("There is no reading in the log of " + system
                    + " yet. Write one: tidewright note alkalinity 8.1 dKH by photometer");
            return;
        }
        if (asked.isPresent()) {
            study.of(asked.get())
                    .ifPresentOrElse(
                            found -> whole(prose, found, units),
                            () -> prose.paragraph(
                                    "There is no reading of " + asked.get().words() + " yet."));
        } else {
            all(prose, system, study, units);
        }
        study.notes().forEach(note -> prose.paragraph("– ", "  ", note));
    }

    private static void all(Prose prose, String system, WaterStudy study, UnitSystem units) {
        prose.line(system);
        prose.blank();
        prose.line(String.format(COLUMNS, "", "now", "used a day", ""));
        for (QuantityStudy each : study.quantities()) {
            String use = each.use() == null
                    ? ""
                    : FigureText.of(Told.use(each.quantity(), each.use()), units)
                            .line();
            prose.line(String.format(
                    COLUMNS,
                    each.quantity().words(),
                    FigureText.of(Told.level(each.quantity(), each.now()), units)
                            .line(),
                    use,
                    each.state()));
        }
        for (QuantityStudy each : study.quantities()) {
            if (each.call() != QuantityStudy.Call.NONE) {
                prose.blank();
                prose.paragraph("– ", "  ", each.advice().lead().text(units));
            }
        }
    }

    private static void whole(Prose prose, QuantityStudy study, UnitSystem units) {
        prose.paragraph(study.advice().lead().text(units));
        for (Sentence remark : study.advice().remarks()) {
            prose.paragraph("– ", "  ", remark.text(units));
        }
        prose.blank();
        if (!study.forks().isEmpty()) {
            prose.line("If you changed it today, in a fortnight:");
            for (Fork fork : study.forks()) {
                prose.line(String.format(
                        "  %-22s %-16s %3d %% within the range",
                        fork.words() + " " + FigureText.of(fork.dose(), units).line(),
                        FigureText.of(Told.level(study.quantity(), fork.level()), units)
                                .line(),
                        Math.round(100 * fork.inRange())));
            }
            prose.blank();
        }
        study.advice().cautions().forEach(caution -> prose.paragraph("Caution. ", "  ", caution));
        for (Source source : study.advice().sources()) {
            prose.paragraph(
                    "  " + source.key() + "  ",
                    "     ",
                    source.what() + ": " + source.basis().words() + ", " + source.detail() + ".");
        }
    }
}
