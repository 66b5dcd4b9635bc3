package org.tidewright.husbandry.livestock;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import org.tidewright.husbandry.burden.Lately;
import org.tidewright.plan.model.Inhabitants;
import org.tidewright.plan.model.Inhabitants.GrowthStage;
import org.tidewright.plan.model.Plan;
import org.tidewright.plan.quantity.Amount;
import org.tidewright.plan.species.FishSpecies;
import org.tidewright.seawater.unit.Unit;
import org.tidewright.twin.forecast.Variant;

/**
 * A plan with who lives there today, for the twin.
 *
 * @param lately what its bacteria may not have followed yet; a test of how much ammonia the water clears is in no log
 */
public record Peopled(Plan plan, Lately lately) {
    /** Of its usual length: nine tenths of its weight. */
    private static final double GROWN = 0.965;

    public static Peopled of(Plan plan, Community community, LocalDate today) {
        return new Peopled(plan(plan, community), lately(community, today));
    }

    /** The plan with the fish of known species as they are today, and those of none as it says. */
    private static Plan plan(Plan plan, Community community) {
        List<Inhabitants.Fish> fish = new ArrayList<>();
        Inhabitants there = plan.inhabitants();
        if (there != null) {
            there.fish().stream()
                    .filter(each -> community.unknown().contains(each.name()))
                    .forEach(fish::add);
        }
        community.residents().stream().filter(Animals::isFish).map(Peopled::row).forEach(fish::add);
        Inhabitants now = there == null
                ? new Inhabitants(fish, List.of(), null, List.of(), null, null, null)
                : new Inhabitants(
                        fish,
                        there.invertebrates(),
                        there.coralTissue(),
                        there.corals(),
                        there.corallineArea(),
                        there.alkalinityUse(),
                        there.counted());
        return Variant.of(plan).living(now, plan.feeding()).plan();
    }

    private static Inhabitants.Fish row(Animals fish) {
        FishSpecies species = fish.fish();
        boolean grows = fish.length() < GROWN * species.size().usual();
        return new Inhabitants.Fish(
                species.name().common(),
                species.name().scientific(),
                Amount.of(species.mass(fish.length()), "kg"),
                fish.count(),
                Amount.of(fish.length(), "m"),
                grows ? GrowthStage.GROWING : GrowthStage.ADULT);
    }

    private static Lately lately(Community community, LocalDate today) {
        List<Lately.Arrival> arrivals = community.arrivals().stream()
                .map(each -> new Lately.Arrival((int) ChronoUnit.DAYS.between(each.day(), today), mass(each.fish())))
                .toList();
        return new Lately(arrivals, 0);
    }

    private static @Unit("kg") double mass(Animals fish) {
        return fish.count() * fish.fish().mass(fish.length());
    }
}
