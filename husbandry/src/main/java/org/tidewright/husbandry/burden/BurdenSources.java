package org.tidewright.husbandry.burden;

import java.util.List;
import java.util.Locale;
import org.tidewright.husbandry.advice.Source;
import org.tidewright.husbandry.advice.Sources;
import org.tidewright.husbandry.limit.DisplayLimits;
import org.tidewright.husbandry.limit.TargetRange;
import org.tidewright.plan.source.Basis;
import org.tidewright.seawater.unit.Unit;
import org.tidewright.twin.forecast.NewTank;

/** What the figures of a burden and their bounds stand on, each with its letter. */
final class BurdenSources {
    /** Ammonia, as nitrogen, from which a kit shows it; common practice. */
    @Unit("mg/L")
    static final double SHOWS = NewTank.CLEAR;

    private final Sources sources = new Sources();
    private final String twin;
    private final String freeAmmonia;
    private final String nitrite;
    private final String kit;
    private final DisplayLimits limits;

    BurdenSources(Burden burden) {
        twin = sources.key(
                "Ammonia, nutrients and oxygen with and without the animals",
                Basis.COMPUTED,
                "by the twin of your plan, " + burden.draws()
                        + " draws of what is not known exactly; an outage by more");
        freeAmmonia = sources.key(
                "Free ammonia to watch from 0.02 and harmful from 0.03 mg/L of nitrogen",
                Basis.PUBLISHED,
                "under the 0.050 mg/L that a silverside bears for good (Miller, Poucher and Cardin 1990); the two marks are ours");
        nitrite = sources.key(
                "Nitrite to watch from 0.5 mg/L of nitrogen",
                Basis.COMMON_PRACTICE,
                "the sea's chloride shields fish from it, and not every animal is a fish");
        kit = sources.key(
                "A kit shows ammonia from 0.1 mg/L of nitrogen", Basis.COMMON_PRACTICE, "what usual kits can tell");
        limits = DisplayLimits.of(burden.plan(), sources);
        sources.key(
                "Breath and appetite go with mass to the 0.8",
                Basis.PUBLISHED,
                "Clarke and Johnston 1999; other studies say 0.63 to 0.89");
        sources.key("Nitrogen and phosphorus of the food", Basis.FROM_MEMORY, "product labels and food tables");
        sources.key(
                "Oxygen on a usual night: watch under 80 %, more air under 60 % of saturation",
                Basis.COMMON_PRACTICE, "the marks are ours");
    }

    /** The twin's figures. */
    String twin() {
        return twin;
    }

    String freeAmmonia() {
        return freeAmmonia;
    }

    String nitrite() {
        return nitrite;
    }

    String kit() {
        return kit;
    }

    DisplayLimits limits() {
        return limits;
    }

    /** Where a nutrient is held. */
    String range(TargetRange range) {
        String name = range.quantity().toString().toLowerCase(Locale.ROOT);
        String words = name.substring(0, 1).toUpperCase(Locale.ROOT) + name.substring(1);
        return sources.key(words + " between which it is held", range.basis(), range.detail());
    }

    List<Source> all() {
        return sources.all();
    }
}
