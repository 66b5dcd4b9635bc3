package org.tidewright.husbandry.livestock;

import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.tidewright.husbandry.burden.Addition;
import org.tidewright.husbandry.burden.Burden;
import org.tidewright.husbandry.burden.Residents;
import org.tidewright.plan.species.FishSpecies;
import org.tidewright.twin.ensemble.Ensemble;

/**
 * Asks the twin of a system, with who lives in it now, what candidates would do to its water. The system as it is is run once, by
 * whoever asks first, which takes a second or two.
 */
public final class TwinWater implements Water {
    private final Peopled peopled;
    private final Ensemble.Progress progress;
    private @Nullable Residents residents;

    public TwinWater(Peopled peopled, Ensemble.Progress progress) {
        this.peopled = peopled;
        this.progress = progress;
    }

    /**
     * Runs the system as it is, unless that is done.
     *
     * @throws java.util.concurrent.CancellationException once it is cancelled
     */
    public synchronized Residents residents() {
        if (residents == null) {
            residents =
                    Residents.of(peopled.plan(), peopled.lately(), Residents.usualOutage(), Residents.DRAWS, progress);
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
}
