package org.tidewright.husbandry.livestock;

import java.util.List;
import org.tidewright.husbandry.advice.Figure;
import org.tidewright.husbandry.advice.Measure;
import org.tidewright.husbandry.advice.Sentence;
import org.tidewright.plan.species.Species;

/** Water in which it lives for good, and in which those here do. */
final class WarmthRule implements Rule {
    @Override
    public List<Finding> judge(Situation seen) {
        Species.Warmth warmth = seen.candidate().species().warmth();
        Home home = seen.home();
        if (warmth.most() > home.coolest() && warmth.least() < home.warmest()) {
            return List.of();
        }
        boolean tooWarm = warmth.most() <= home.coolest();
        return List.of(Finding.of(
                "temperature",
                Call.NO,
                Sentence.of(
                        "Your water is too " + (tooWarm ? "warm" : "cold") + " for it: it lives at ",
                        Figure.exact(Measure.TEMPERATURE, warmth.least()),
                        " to ",
                        Figure.exact(Measure.TEMPERATURE, warmth.most()),
                        "."),
                Sentence.of(
                        "It would last months and not years.",
                        Facts.source(seen, "Temperatures it is kept at", warmth.source()))));
    }
}
