package org.tidewright.husbandry.solution;

import java.util.ArrayList;
import java.util.List;
import org.tidewright.husbandry.advice.Sentence;
import org.tidewright.husbandry.solution.SolutionReport.Told;

/** Tells what is in a bottle that is already there. */
final class BottleWords {
    private static final double MILLILITRE = 1e-6;

    /** Standard error, as a share, from which a dose should be felt for; common practice. */
    private static final double POORLY_KNOWN = 0.15;

    private BottleWords() {}

    static SolutionReport report(Strength strength, boolean tested, double water) {
        SolutionSources sources = new SolutionSources();
        String source = tested ? sources.errors() : sources.label();
        String what = strength.supply().words();
        Sentence lead = Sentence.of(
                "Count on ",
                Sentence.figure(strength.figure(), source),
                " of " + what + " in this bottle: a millilitre raises ",
                MixingWords.volume(water),
                " by ",
                strength.riseFigure(MILLILITRE, water),
                ".");
        List<Sentence> remarks = new ArrayList<>();
        if (!tested) {
            remarks.add(
                    Sentence.of("Dose once, test before and after, and write both down: a label says what was meant, a"
                            + " test what is in the bottle now."));
        } else if (strength.standardError() > POORLY_KNOWN * strength.value()) {
            remarks.add(Sentence.of(
                    "Test again after a larger dose, or several times before and after: the rise is hardly more"
                            + " than the readings are unsure."));
        }
        if (tested) {
            remarks.add(Sentence.of(
                    "Test when the dose is mixed in, within an hour or two: what the animals take up in between"
                            + " makes the bottle look weaker than it is."));
        }
        List<Told> figures = List.of(
                new Told(what + " in the bottle", strength.figure(), source),
                new Told(what + " from a millilitre", strength.riseFigure(MILLILITRE, water), source));
        List<Sentence> cautions = List.of(
                Sentence.of(
                        "Warm and stir a bottle that holds crystals before you test or dose from it: what stands over"
                                + " them is weaker than all of it together."),
                Sentence.of(
                        "Do not open or thin down a bottle whose label you cannot read: without its safety data sheet"
                                + " nobody knows what it does to eyes and skin."));
        return new SolutionReport(lead, List.of(), remarks, figures, cautions, sources.all());
    }
}
