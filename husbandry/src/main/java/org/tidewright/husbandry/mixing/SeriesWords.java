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
    private final double rateError;
    private final Sources sources = new Sources();
    private final String law = sources.key(
            "A share is carried off with each change", Basis.COMPUTED, "closed form of the steps in the working");
    private final String rates = Telling.rates(sources);

    SeriesWords(ChangeSeries series, WaterChange change, Keeping keeping, double rateError) {
        this.series = series;
        this.change = change;
        this.keeping = keeping;
        this.rateError = rateError;
    }

    Advice advice() {
        List<Advice.Told> figures = new ArrayList<>();
        int count = series.changes().orElse(0);
        if (count > 0) {
            figures.add(new Advice.Told(count == 1 ? "after the change" : "after the last change", after(count), law));
        }
        figures.add(new Advice.Told("after each change, in the long run", settledAfter(), law));
        figures.add(new Advice.Told("before each change, in the long run", settledBefore(), law));
        return new Advice(
                lead(), remarks(), figures, working(), List.of(Telling.ELECTRICITY, Telling.SIPHON), sources.all());
    }

    private Figure value(double value) {
        return Telling.value(series.quantity(), value);
    }

    private Figure value(double value, double standardError) {
        return Telling.value(series.quantity(), value, standardError);
    }

    private Figure now() {
        return value(series.now(), change.system().water().error(series.quantity()));
    }

    private Figure after(int changes) {
        double now = change.system().water().error(series.quantity());
        return value(series.after(changes), series.errorAfter(changes, now, rateError));
    }

    private Figure settledAfter() {
        double perRate = series.interval() * (1 - series.share()) / series.share();
        return value(series.settledAfter(), perRate * rateError);
    }

    private Figure settledBefore() {
        return value(series.settledBefore(), series.interval() / series.share() * rateError);
    }

    private String name() {
        return series.quantity().words();
    }

    private Sentence lead() {
        double nowError = change.system().water().error(series.quantity());
        if (series.now() != series.target() && Math.abs(series.now() - series.target()) < nowError) {
            return Sentence.of(
                    "Test again before you change water for it: " + name() + " is known as ",
                    now(),
                    " and may stand at its target of ",
                    value(series.target()),
                    " already.");
        }
        return switch (series.reach()) {
            case THERE -> Sentence.of("Nothing to do for " + name() + ": it stands at ", now(), ", its target.");
            case REACHED -> reached(series.changes());
            case NEW_WATER -> isAtTarget(series.newWater()) ? never() : newWater();
            case OUTRUN -> outrun();
        };
    }

    private boolean isAtTarget(double value) {
        return Math.abs(value - series.target()) <= 1e-9 * series.target();
    }

    private Sentence newWater() {
        boolean food = series.quantity() == WaterQuantity.NITRATE || series.quantity() == WaterQuantity.PHOSPHATE;
        if (food && series.target() > series.now()) {
            return Sentence.of(
                    "No change raises " + name() + " here: it stands at ",
                    now(),
                    ", under its target of ",
                    value(series.target()),
                    ", and new water of ",
                    value(series.newWater()),
                    " only takes it down. It rises with food.");
        }
        return Sentence.of(
                "Mend the new water first: it holds ",
                value(series.newWater()),
                " of " + name() + ", and no number of changes brings the system from ",
                now(),
                " to ",
                value(series.target()),
                " with it.");
    }

    private Sentence reached(OptionalInt changes) {
        int count = changes.orElseThrow();
        Sentence act = Sentence.of(
                "Make " + count + (count == 1 ? " change of " : " changes of "),
                Telling.volume(change.volume()),
                count == 1 ? "" : Sentence.of(", ", Telling.time(series.interval()), " apart"),
                ": after the last, " + name() + " stands at ",
                Sentence.figure(after(count), law),
                "; the target is ",
                value(series.target()),
                ".");
        return series.holds()
                ? act
                : act.then(Sentence.of(
                        "It does not stay there: kept up, the changes leave it at ",
                        settledAfter(),
                        ", and it stands at ",
                        settledBefore(),
                        " before the next."));
    }

    /** New water that stands at the target itself. */
    private Sentence never() {
        int half = (int) Math.ceil(Math.log(0.5) / Math.log1p(-series.share()));
        return Sentence.of(
                "Aim a little short of it, or mix new water beyond it: changes with ",
                value(series.newWater()),
                " of " + name() + " come ever nearer to ",
                value(series.target()),
                " and never quite there. Half of the way is done after " + half
                        + (half == 1 ? " change of " : " changes of "),
                Telling.volume(change.volume()),
                ".");
    }

    private String lessOfIt() {
        return switch (series.quantity()) {
            case NITRATE, PHOSPHATE -> "Feed less or carry more out another way";
            default -> "Dose less of it";
        };
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
                Sentence.figure(settledAfter(), law),
                " in the long run, short of ",
                value(series.target()));
        String first = series.rate() > 0 ? lessOfIt() : "Dose what is used up";
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
        Telling.assumed(change).ifPresent(remarks::add);
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
