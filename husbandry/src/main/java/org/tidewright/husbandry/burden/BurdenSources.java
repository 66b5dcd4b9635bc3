package org.tidewright.husbandry.burden;

import java.util.Locale;
import org.tidewright.husbandry.advice.Source;
import org.tidewright.husbandry.advice.Sources;
import org.tidewright.husbandry.limit.DisplayLimits;
import org.tidewright.husbandry.limit.Limit;
import org.tidewright.husbandry.limit.TargetRange;
import org.tidewright.plan.source.Basis;
import org.tidewright.seawater.unit.Unit;
import org.tidewright.twin.forecast.NewTank;

/** What the figures of a burden and their bounds stand on, each with its letter once it is asked for. */
public final class BurdenSources {
    /** Ammonia, as nitrogen, from which a kit shows it; common practice. */
    @Unit("mg/L")
    static final double SHOWS = NewTank.CLEAR;

    private final Burden burden;
    private final Sources sources;
    private final Sources ofLimits = new Sources();
    private final DisplayLimits limits;

    /** Adds to the sources of what else is told. */
    public BurdenSources(Burden burden, Sources sources) {
        this.burden = burden;
        this.sources = sources;
        limits = DisplayLimits.of(burden.plan(), ofLimits);
    }

    /** The twin's figures. */
    public String twin() {
        return sources.key(
                "Ammonia, nutrients and oxygen with and without the animals",
                Basis.COMPUTED,
                "by the twin of your plan, " + burden.draws()
                        + " draws of what is not known exactly; an outage by more");
    }

    public String freeAmmonia() {
        return sources.key(
                "Free ammonia to watch from 0.02 and harmful from 0.03 mg/L of nitrogen",
                Basis.PUBLISHED,
                "under the 0.050 mg/L that a silverside bears for good (Miller, Poucher and Cardin 1990); the two marks are ours");
    }

    public String nitrite() {
        return sources.key(
                "Nitrite to watch from 0.5 mg/L of nitrogen",
                Basis.COMMON_PRACTICE,
                "the sea's chloride shields fish from it, and not every animal is a fish");
    }

    String kit() {
        return sources.key(
                "A kit shows ammonia from 0.1 mg/L of nitrogen", Basis.COMMON_PRACTICE, "what usual kits can tell");
    }

    /** Of the marks for a usual night. */
    public String night() {
        return sources.key(
                "Oxygen on a usual night: watch under 80 %, more air under 60 % of saturation",
                Basis.COMMON_PRACTICE, "the marks are ours");
    }

    /** Of the figures that lie behind all others. */
    void rest() {
        sources.key(
                "Breath and appetite go with mass to the 0.8",
                Basis.PUBLISHED,
                "Clarke and Johnston 1999; other studies say 0.63 to 0.89");
        sources.key("Nitrogen and phosphorus of the food", Basis.FROM_MEMORY, "product labels and food tables");
    }

    /** Oxygen at which a keeper must act. */
    public Limit actOxygen() {
        return kept(limits.actOxygen());
    }

    /** Oxygen at which animals come to harm. */
    Limit harmOxygen() {
        return kept(limits.harmOxygen());
    }

    private Limit kept(Limit limit) {
        Source source = ofLimits.all().stream()
                .filter(each -> each.key().equals(limit.source()))
                .findFirst()
                .orElseThrow();
        String key = sources.key(source.what(), source.basis(), source.detail());
        return new Limit(limit.words(), limit.value(), limit.forbiddenBelow(), key);
    }

    /** Where a nutrient is held. */
    public String range(TargetRange range) {
        String name = range.quantity().toString().toLowerCase(Locale.ROOT);
        String words = name.substring(0, 1).toUpperCase(Locale.ROOT) + name.substring(1);
        return sources.key(words + " between which it is held", range.basis(), range.detail());
    }
}
