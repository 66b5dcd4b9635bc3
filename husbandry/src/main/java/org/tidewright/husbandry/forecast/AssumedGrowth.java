package org.tidewright.husbandry.forecast;

import java.util.Optional;
import org.tidewright.husbandry.advice.FigureText;
import org.tidewright.twin.forecast.Change;

/** Tells that the corals of a forecast grow on the way, and by how much. */
public final class AssumedGrowth {
    private AssumedGrowth() {}

    /** A sentence; none where nothing grows that a forecast of its length would show. */
    public static Optional<String> of(ForecastReport report) {
        if (report.growth().isEmpty()) {
            return Optional.empty();
        }
        Change last = report.growth().get(report.growth().size() - 1);
        return Optional.of("Your corals grow on the way: at the end they take "
                + FigureText.number(100 * last.value(), 0)
                + "\u00a0% of the alkalinity they take now, and a dose that stays falls behind. How fast they grow is known"
                + " to a factor of two; to reckon with a growth of your own, change the lever corals.");
    }
}
