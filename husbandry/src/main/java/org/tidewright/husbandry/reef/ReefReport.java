package org.tidewright.husbandry.reef;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.tidewright.husbandry.advice.Advice;
import org.tidewright.husbandry.advice.Source;
import org.tidewright.seawater.unit.Unit;

/**
 * All that is told of the corals of a system, from one list of sources.
 *
 * @param placing what to do about those that are there
 * @param corals each whose place is known, in the plan's order
 * @param growing what they will take, and what to prepare
 * @param demand that over time
 * @param trial the answer about a candidate; null where none was asked for
 * @param tried how it would stand at the place that was asked for; null where none was
 * @param suggested where it could stand, the best first
 * @param sources of everything
 */
public record ReefReport(
        Advice placing,
        List<PlacementWords.Told> corals,
        Advice growing,
        List<GrowthWords.Row> demand,
        @Nullable Advice trial,
        @Nullable Placement tried,
        List<Placement> suggested,
        List<Source> sources) {
    private static final int SUGGESTIONS = 3;

    /**
     * A coral that might stand somewhere.
     *
     * @param colony one of the plan's, or another
     * @param place null to ask where it could stand
     */
    public record Trial(Colony colony, @Nullable Place place) {}

    /**
     * Works it out.
     *
     * @param volume of the system's water
     * @param trial null for none
     */
    public static ReefReport of(ReefSite site, Growth growth, @Unit("m^3") double volume, @Nullable Trial trial) {
        ReefSources sources = new ReefSources();
        PlacementWords words = new PlacementWords(site, sources);
        GrowthWords grown = new GrowthWords(site.plan(), growth, volume, sources);
        Advice placing = words.ofAll();
        List<PlacementWords.Told> corals = site.placed().stream()
                .map(colony -> words.of(site.placement(colony)))
                .toList();
        List<Placement> suggested = trial == null ? List.of() : Sites.suggested(site, trial.colony(), SUGGESTIONS);
        Placement tried = trial == null || trial.place() == null ? null : site.at(trial.colony(), trial.place());
        Advice answer = null;
        if (tried != null) {
            answer = words.candidate(tried, tried.isGood() ? List.of() : suggested);
        } else if (trial != null) {
            answer = words.anywhere(trial.colony(), suggested);
        }
        return new ReefReport(
                placing,
                corals,
                grown.advice(),
                grown.rows(),
                answer,
                tried,
                tried != null && tried.isGood() ? List.of() : suggested,
                sources.all().all());
    }
}
