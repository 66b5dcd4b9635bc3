package org.tidewright.husbandry.livestock;

import java.util.List;
import org.tidewright.husbandry.advice.Sentence;
import org.tidewright.plan.species.FishSpecies;
import org.tidewright.plan.species.InvertebrateSpecies;
import org.tidewright.plan.species.SpeciesSource;

/** Animals that live in sand, sleep in it or eat from it. */
final class SandRule implements Rule {
    /** A bed is uneven; this much below what is asked for is let pass. */
    private static final double UNEVEN = 0.01;

    @Override
    public List<Finding> judge(Situation seen) {
        if (!seen.candidate().isFish()) {
            InvertebrateSpecies.Temper temper = seen.candidate().invertebrate().temper();
            return judge(seen, temper.sand(), "It lives in sand, and yours is ", temper.source());
        }
        FishSpecies.Space space = seen.candidate().fish().space();
        String words = space.night() == FishSpecies.Night.SAND
                ? "It sleeps buried in sand, and yours is "
                : "It lives off sand, and yours is ";
        return judge(seen, space.sand(), words, space.source());
    }

    private static List<Finding> judge(Situation seen, double needed, String words, SpeciesSource source) {
        if (needed <= 0 || seen.home().sand() >= needed - UNEVEN) {
            return List.of();
        }
        return List.of(Finding.of(
                        "sand",
                        Call.NOT_YET,
                        Sentence.of(words, Facts.length(seen.home().sand()), " deep."),
                        Sentence.of(
                                "Without it it hides, starves or rubs itself sore.",
                                Facts.source(seen, "Sand it needs", source)))
                .becomes(Sentence.of("Lay ", Facts.length(needed), " of fine sand first.")));
    }
}
