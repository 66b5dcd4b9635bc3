package org.tidewright.husbandry.mixing;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalInt;
import org.tidewright.husbandry.advice.Advice;
import org.tidewright.husbandry.advice.Figure;
import org.tidewright.husbandry.advice.Measure;
import org.tidewright.husbandry.advice.Sentence;
import org.tidewright.husbandry.advice.Sources;
import org.tidewright.husbandry.limit.Keeping;
import org.tidewright.husbandry.limit.SafeRate;
import org.tidewright.husbandry.mixing.ChangeSeries.Reach;
import org.tidewright.husbandry.mixing.ChangeSeries.Step;
import org.tidewright.husbandry.mixing.Shift.Pace;
import org.tidewright.plan.method.WaterQuantity;
import org.tidewright.plan.source.Basis;

/** Tells a series of changes. */
final class SeriesWords {
    /** More rows than this nobody reads. */
    private static final int MOST_ROWS = 12;

    /** Nobody is told to change more than half of a system each time. */
    private static final double MOST_AT_ONCE = 0.5;

    private final ChangeSeries series;
    private final WaterChange change;
    private final Keeping keeping;
    private final Sources sources = new Sources();
    private final String law = sources.key(
            "A share is carried off with each change", Basis.COMPUTED, "closed form of the steps in the working");
    private final String rates = Telling.rates(sources);

    SeriesWords(ChangeSeries series, WaterChange change, Keeping keeping) {
        this.series = series;
        this.change = change;
        this.keeping = keeping;
    }

    Advice advice() {
        List<Advice.Told> figures = new ArrayList<>();
        figures.add(new Advice.Told("after each change, in the long run", value(series.settledAfter()), law));
        figures.add(new Advice.Told("before each change, in the long run", value(series.settledBefore()), law));
        return new Advice(
                lead(), remarks(), figures, working(), List.of(Telling.ELECTRICITY, Telling.SIPHON), sources.all());
    }

    private Figure value(double value) {
        return Telling.value(series.quantity(), value);
    }

    private String name() {
        return series.quantity().words();
    }

    private Sentence lead() {
        return switch (series.reach()) {
            case THERE ->
                Sentence.of("Nothing to do for " + name() + ": it stands at ", value(series.now()), ", its target.");
            case REACHED -> reached(series.changes());
            case NEW_WATER ->
                Sentence.of(
                        "Mend the new water first: it holds ",
                        value(series.newWater()),
                        " of " + name() + ", and no number of changes brings the system from ",
                        value(series.now()),
                        " to ",
                        value(series.target()),
                        " with it.");
            case OUTRUN -> outrun();
        };
    }

    private Sentence reached(OptionalInt changes) {
        int count = changes.orElseThrow();
        Sentence act = Sentence.of(
                "Make " + count + (count == 1 ? " change of " : " changes of "),
                Telling.volume(change.volume()),
                count == 1 ? "" : Sentence.of(", ", Telling.time(series.interval()), " apart"),
                ": after the last, " + name() + " stands at ",
                Sentence.figure(value(series.after(count)), law),
                "; the target is ",
                value(series.target()),
                ".");
        return series.holds()
                ? act
                : act.then(Sentence.of(
                        "It does not stay there: kept up, the changes leave it at ",
                        value(series.settledAfter()),
                        ", and it stands at ",
                        value(series.settledBefore()),
                        " before the next."));
    }

    private Sentence outrun() {
        Sentence reason = Sentence.of(
                "the system " + (series.rate() > 0 ? "makes " : "uses "),
                value(Math.abs(series.rate()) * SafeRate.DAY),
                " of it a day, and changes of ",
                Telling.volume(change.volume()),
                " every ",
                Telling.time(series.interval()),
                " leave it at ",
                Sentence.figure(value(series.settledAfter()), law),
                " in the long run, short of ",
                value(series.target()));
        String first = series.rate() > 0 ? "Feed less or carry more out another way" : "Dose what is used up";
        return series.shareToHold().orElse(1) > MOST_AT_ONCE
                ? Sentence.of(first + ": ", reason, ".")
                : Sentence.of(
                        first + ", or change ",
                        Telling.volume(ChangeSeries.volume(
                                change.system(),
                                change.newWater(),
                                series.shareToHold().getAsDouble())),
                        " each time: ",
                        reason,
                        ".");
    }

    private List<Sentence> remarks() {
        List<Sentence> remarks = new ArrayList<>();
        Shift first = new Shift(series.quantity(), series.now(), series.after(1));
        Pace pace = first.pace(keeping);
        if (series.reach() == Reach.REACHED && pace.compareTo(Pace.BRISK) >= 0) {
            SafeRate rate = first.rates(keeping).get(0);
            remarks.add(Sentence.of(
                    pace == Pace.SHOCK
                            ? "Make them smaller: the first one moves "
                            : "Smaller ones are gentler: the first moves ",
                    name() + " by ",
                    Telling.step(series.quantity(), first.step()),
                    " at once, and ",
                    Telling.step(series.quantity(), rate.comfortable()),
                    " a day is comfortable for " + keeping.words() + ", ",
                    Sentence.figure(Telling.step(series.quantity(), rate.ceiling()), rates),
                    " the ceiling."));
        }
        if (series.quantity() == WaterQuantity.PHOSPHATE) {
            remarks.add(
                    Sentence.of("Rock and sand hold phosphate and give it back: expect it to fall less than reckoned,"
                            + " and measure before each change."));
        }
        return remarks;
    }

    private List<Sentence> working() {
        List<Sentence> working = new ArrayList<>();
        working.add(Sentence.of(
                "Each change carries off ",
                Figure.exact(Measure.SHARE, series.share()),
                ": after = before × (1 − share) + new water × share; in between ",
                Figure.exact(Measure.DURATION, series.interval()),
                series.rate() < 0 ? " take off " : " add ",
                value(Math.abs(series.rate()) * series.interval()),
                "."));
        int rows = Math.min(MOST_ROWS, Math.max(series.changes().orElse(MOST_ROWS), 0));
        for (Step step : series.steps(rows)) {
            working.add(Sentence.of(
                    "Change " + step.number(),
                    step.number() == 1
                            ? Sentence.of(", at once: from ")
                            : Sentence.of(", after ", Telling.time(step.time()), ": from "),
                    value(step.before()),
                    " to ",
                    value(step.after()),
                    "."));
        }
        return working;
    }
}
