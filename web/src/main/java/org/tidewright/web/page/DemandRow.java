package org.tidewright.web.page;

import java.util.ArrayList;
import java.util.List;
import org.tidewright.husbandry.advice.Figure;
import org.tidewright.husbandry.advice.Measure;
import org.tidewright.husbandry.reef.DoseAhead;
import org.tidewright.husbandry.reef.GrowthWords;
import org.tidewright.plan.model.UnitSystem;

/**
 * What skeletons take a day at one time, and the doses that bring it.
 *
 * @param covered of the floor
 * @param doses of the plan's solutions, in the order of their names
 */
public record DemandRow(
        String when, Markup alkalinity, Markup calcium, Markup magnesium, Markup covered, List<Markup> doses) {
    private static final double DAY = 86_400;

    /** Names of the solutions it is told in. */
    static List<String> doses(List<GrowthWords.Row> rows) {
        return rows.get(rows.size() - 1).doses().stream()
                .map(dose -> dose.dosing().name())
                .toList();
    }

    static List<DemandRow> all(List<GrowthWords.Row> rows, UnitSystem units) {
        List<DemandRow> told = new ArrayList<>();
        List<DoseAhead> last = rows.get(rows.size() - 1).doses();
        for (GrowthWords.Row row : rows) {
            List<Markup> doses = new ArrayList<>();
            for (int i = 0; i < last.size(); i++) {
                Figure figure = row.doses().isEmpty()
                        ? Figure.exact(Measure.DOSE_A_DAY, DAY * last.get(i).now())
                        : row.doses().get(i).then().times(DAY).figure(Measure.DOSE_A_DAY);
                doses.add(SentenceMarkup.of(figure, units));
            }
            told.add(new DemandRow(
                    row.when(),
                    SentenceMarkup.of(row.alkalinity(), units),
                    SentenceMarkup.of(row.calcium(), units),
                    SentenceMarkup.of(row.magnesium(), units),
                    SentenceMarkup.of(row.covered(), units),
                    doses));
        }
        return told;
    }
}
