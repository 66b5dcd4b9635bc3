package org.tidewright.husbandry.burden;

import java.util.List;
import org.tidewright.husbandry.advice.Figure;
import org.tidewright.husbandry.advice.Measure;
import org.tidewright.husbandry.advice.Sentence;
import org.tidewright.husbandry.limit.Limit;
import org.tidewright.twin.forecast.Outlook.Range;

/** Tells how much less time there is when the power fails. */
final class OutageRemarks {
    private OutageRemarks() {}

    static List<Sentence> of(Burden burden, BurdenSources sources, String it) {
        return List.of(
                told(burden.act(), burden.grown().act(), sources.actOxygen(), "where you must act", sources, it),
                told(
                        burden.harm(),
                        burden.grown().harm(),
                        sources.harmOxygen(),
                        "where animals come to harm",
                        sources,
                        it));
    }

    private static Sentence told(
            Sooner young, Sooner grown, Limit limit, String meaning, BurdenSources sources, String it) {
        boolean never = Double.isInfinite(young.without().middle())
                && Double.isInfinite(young.with().middle())
                && Double.isInfinite(grown.with().middle());
        Sentence.Part level = Sentence.figure(Figure.exact(Measure.CONCENTRATION, limit.value()), limit.source());
        if (never) {
            return Sentence.of(
                    "In an outage of the usual length oxygen does not fall to ",
                    level,
                    ", " + meaning + ", in the middle draw, neither with nor without " + it + ".");
        }
        String act = young.sooner().middle() >= Burden.LESS_TIME
                ? "In an outage you have less time: "
                : grown.sooner().middle() >= Burden.LESS_TIME
                        ? "In an outage you will have less time as " + (it.equals("it") ? "it grows: " : "they grow: ")
                        : "In an outage it makes no difference you would notice: ";
        return Sentence.of(
                act + "oxygen falls to ",
                level,
                ", " + meaning + ", ",
                after(young.without(), sources),
                " without " + it + ", ",
                after(young.with(), sources),
                " with " + it + " and ",
                after(grown.with(), sources),
                " with " + it + " grown.");
    }

    private static Sentence after(Range range, BurdenSources sources) {
        if (Double.isInfinite(range.middle())) {
            return Sentence.of("not before it is over");
        }
        Figure time = Figure.between(Measure.DURATION, range.middle(), range.low(), range.high());
        return Sentence.of("after ", Sentence.figure(time, sources.twin()));
    }
}
