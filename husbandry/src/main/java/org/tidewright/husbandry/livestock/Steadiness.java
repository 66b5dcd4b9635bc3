package org.tidewright.husbandry.livestock;

import java.time.Instant;
import java.time.ZoneId;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.tidewright.husbandry.journal.Line;
import org.tidewright.husbandry.quantity.Stability;
import org.tidewright.husbandry.quantity.WaterStudy;
import org.tidewright.plan.method.WaterQuantity;
import org.tidewright.plan.model.Plan;
import org.tidewright.seawater.unit.Unit;

/** How steady the water was, as far as the log tells. */
public final class Steadiness {
    /** Days that have to be known, of the 30 that are looked back. */
    private static final int ENOUGH = 21;

    private Steadiness() {}

    /** Standard deviation of alkalinity over the last 30 days, what is not known of it counted in; null for too few days. */
    public static @Nullable @Unit("mol/m^3") Double alkalinity(Plan plan, List<Line> lines, Instant now, ZoneId zone) {
        return alkalinity(WaterStudy.of(plan, lines, now, zone));
    }

    /** The same from a study that is made already. */
    public static @Nullable @Unit("mol/m^3") Double alkalinity(WaterStudy study) {
        return study.of(WaterQuantity.ALKALINITY)
                .flatMap(found -> found.stability().stream().findFirst())
                .filter(stability -> stability.days() >= ENOUGH)
                .map(Stability::variation)
                .orElse(null);
    }
}
