package org.tidewright.husbandry.solution;

import java.util.ArrayList;
import java.util.List;
import org.tidewright.husbandry.advice.Figure;
import org.tidewright.husbandry.advice.Measure;
import org.tidewright.husbandry.advice.Sentence;

/** Tells how long a solution lasts, at the plan's dose and at the system's own use. */
final class LastingWords {
    private final Recipe recipe;
    private final Surroundings around;
    private final SolutionSources sources;

    LastingWords(Recipe recipe, Surroundings around, SolutionSources sources) {
        this.recipe = recipe;
        this.around = around;
        this.sources = sources;
    }

    List<Sentence> remarks() {
        List<Sentence> remarks = new ArrayList<>();
        if (around.perDay() > 0) {
            remarks.add(Sentence.of(
                    "It lasts ",
                    lasts(around.perDay()),
                    " days at the plan’s ",
                    Sentence.figure(MixingWords.volume(around.perDay()), sources.planned()),
                    " a day."));
        }
        for (DailyUse use : around.uses()) {
            Strength strength = recipe.strength(use.supply());
            if (use.value() > 0 && strength.value() > 0) {
                remarks.add(ofUse(use, strength));
            }
        }
        return remarks;
    }

    /** s(v)/v follows from the doubt of the use and that of the strength. */
    private Sentence ofUse(DailyUse use, Strength strength) {
        double dose = strength.doseFor(use.value(), around.water());
        double relative = Math.hypot(use.relativeError(), strength.standardError() / strength.value());
        return Sentence.of(
                "If it alone is to replace the " + use.supply().words() + " the system uses, ",
                Sentence.figure(use.supply().use(use.value(), use.standardError()), sources.use(use)),
                ", dose ",
                MixingWords.volume(dose, relative * dose),
                " a day: it lasts ",
                lasts(dose),
                " days then.");
    }

    private Figure lasts(double perDay) {
        return Figure.exact(Measure.NUMBER, recipe.volume() / perDay);
    }
}
