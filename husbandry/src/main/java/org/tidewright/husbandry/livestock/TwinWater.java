package org.tidewright.husbandry.livestock;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.tidewright.husbandry.burden.Addition;
import org.tidewright.husbandry.burden.Burden;
import org.tidewright.husbandry.burden.Lately;
import org.tidewright.husbandry.burden.Residents;
import org.tidewright.plan.model.Inhabitants;
import org.tidewright.plan.model.Inhabitants.GrowthStage;
import org.tidewright.plan.model.Plan;
import org.tidewright.plan.quantity.Amount;
import org.tidewright.plan.species.FishSpecies;
import org.tidewright.seawater.unit.Unit;
import org.tidewright.twin.ensemble.Ensemble;
import org.tidewright.twin.forecast.Variant;

/**
 * Asks the twin of a system, with who lives in it now, what candidates would do to its water. The system as it is is run once, by
 * whoever asks first, which takes a second or two.
 */
public final class TwinWater implements Water {
    /** Of its usual length: nine tenths of its weight. */
    private static final double GROWN = 0.965;

    private final Plan peopled;
    private final Lately lately;
    private final Ensemble.Progress progress;
    private @Nullable Residents residents;

    public TwinWater(Plan plan, Community community, LocalDate today, Ensemble.Progress progress) {
        this.peopled = peopled(plan, community);
        this.lately = lately(community, today);
        this.progress = progress;
    }

    /**
     * Runs the system as it is, unless that is done.
     *
     * @throws java.util.concurrent.CancellationException once it is cancelled
     */
    public synchronized Residents residents() {
        if (residents == null) {
            residents = Residents.of(peopled, lately, Residents.usualOutage(), Residents.DRAWS, progress);
        }
        return residents;
    }

    @Override
    public Optional<Burden> with(Animals candidate, List<Animals> coming) {
        if (!candidate.isFish()) {
            return Optional.empty();
        }
        List<Addition> before =
                coming.stream().filter(Animals::isFish).map(TwinWater::addition).toList();
        return Optional.of(residents().with(addition(candidate), before, progress));
    }

    private static Addition addition(Animals fish) {
        FishSpecies species = fish.fish();
        double mass = species.mass(fish.length());
        return Addition.today(mass, fish.count(), Math.max(mass, species.mass(fish.grown())));
    }

    /** The plan with the fish of known species as they are today, and those of none as it says. */
    static Plan peopled(Plan plan, Community community) {
        List<Inhabitants.Fish> fish = new ArrayList<>();
        Inhabitants there = plan.inhabitants();
        if (there != null) {
            there.fish().stream()
                    .filter(each -> community.unknown().contains(each.name()))
                    .forEach(fish::add);
        }
        community.residents().stream()
                .filter(Animals::isFish)
                .map(TwinWater::row)
                .forEach(fish::add);
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
