package org.tidewright.web.page;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.tidewright.husbandry.advice.Figure;
import org.tidewright.husbandry.advice.FigureText;
import org.tidewright.husbandry.advice.Measure;
import org.tidewright.husbandry.reef.Colony;
import org.tidewright.husbandry.reef.PlacementWords;
import org.tidewright.husbandry.reef.ReefReport;
import org.tidewright.husbandry.reef.ReefSite;
import org.tidewright.plan.model.UnitSystem;

/**
 * A coral of the plan in the table of the page Corals.
 *
 * @param number as the drawings show it
 * @param facts how wide it is, and how it is known
 * @param light null where the plan has no place for it
 * @param flow likewise
 * @param disc symbol of its verdict
 */
public record CoralRow(
        int number,
        String name,
        String facts,
        @Nullable Markup light,
        @Nullable Markup flow,
        Markup neighbours,
        String verdict,
        String disc) {
    static List<CoralRow> all(ReefSite site, ReefReport report, UnitSystem units) {
        List<CoralRow> rows = new ArrayList<>();
        List<Colony> all = site.colonies();
        int told = 0;
        for (int i = 0; i < all.size(); i++) {
            Colony colony = all.get(i);
            if (colony.place() == null) {
                rows.add(new CoralRow(
                        i + 1,
                        colony.name(),
                        facts(colony, units),
                        null,
                        null,
                        Markup.words("The plan has no place for " + (colony.number() == 1 ? "it." : "them.")),
                        "not told",
                        "ask"));
            } else {
                rows.add(row(i + 1, report.corals().get(told++), units));
            }
        }
        return rows;
    }

    private static CoralRow row(int number, PlacementWords.Told told, UnitSystem units) {
        Colony colony = told.placement().colony();
        return new CoralRow(
                number,
                colony.name(),
                facts(colony, units),
                SentenceMarkup.of(told.light(), units),
                SentenceMarkup.of(told.flow(), units),
                SentenceMarkup.of(told.neighbours(), units),
                told.verdict(),
                switch (told.verdict()) {
                    case "stays" -> "holds";
                    case "watch it" -> "close";
                    case "measure there" -> "ask";
                    default -> "fails";
                });
    }

    private static String facts(Colony colony, UnitSystem units) {
        String wide = FigureText.of(Figure.exact(Measure.LENGTH, 2 * colony.radius()), units)
                        .line() + " wide";
        return (colony.number() > 1 ? colony.number() + " of " : "")
                + wide
                + ", known by its "
                + (colony.traits().ofSpecies() ? "species: " : "form: ")
                + colony.traits().name();
    }
}
