package org.tidewright.husbandry.mixing;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import org.tidewright.husbandry.advice.Advice;
import org.tidewright.husbandry.advice.Figure;
import org.tidewright.husbandry.advice.Measure;
import org.tidewright.husbandry.advice.Sentence;
import org.tidewright.husbandry.advice.Sources;
import org.tidewright.husbandry.limit.SafeRate;
import org.tidewright.plan.method.WaterQuantity;

/** Tells how to bring a salinity where it belongs. */
final class SalinityWords {
    private final SalinityCorrection correction;
    private final double strong;
    private final Sources sources = new Sources();
    private final String mixing = Telling.mixing(sources);
    private final String rates = Telling.rates(sources);
    private final String evaporation;
    private final double nowError;
    private final double evaporationError;

    SalinityWords(
            SalinityCorrection correction,
            double strong,
            double nowError,
            double evaporationError,
            Origin ofEvaporation) {
        this.correction = correction;
        this.strong = strong;
        this.nowError = nowError;
        this.evaporationError = evaporationError;
        evaporation = Telling.given(sources, "Evaporation", ofEvaporation);
    }

    Advice advice() {
        List<String> cautions = new ArrayList<>(List.of(Telling.ELECTRICITY));
        if (correction.target() > correction.now()) {
            cautions.add(Telling.DRY_MIX);
        }
        return new Advice(lead(), remarks(), figures(), working(), cautions, sources.all());
    }

    private Sentence lead() {
        if (correction.target() == correction.now()) {
            return Sentence.of("Leave the salinity alone: it stands at ", salinity(correction.now()), ", its target.");
        }
        return untold()
                ? Sentence.of(
                        "Measure again before you move it: the salinity is known as ",
                        Figure.about(Measure.SALINITY, correction.now(), nowError),
                        " and may stand at its target of ",
                        salinity(correction.target()),
                        " already.")
                : move();
    }

    private Sentence move() {
        return correction.target() < correction.now() ? lower() : raise();
    }

    /** Whether what is to be moved is less than what the salinity is known to. */
    private boolean untold() {
        return correction.target() != correction.now() && Math.abs(correction.target() - correction.now()) < nowError;
    }

    private Sentence lower() {
        return daily(0, "pure water");
    }

    private Sentence raise() {
        OptionalDouble time = correction.topOffTime(strong);
        boolean evaporates = time.isPresent() && Double.isFinite(time.getAsDouble());
        if (!evaporates && strong <= correction.target()) {
            return Sentence.of(
                    "Mix a stronger water first: one of ",
                    salinity(strong),
                    " raises nothing to ",
                    salinity(correction.target()),
                    " by a swap.");
        } else if (!evaporates) {
            return daily(strong, "the stronger water");
        }
        double share = correction.saltyShare(strong);
        return Sentence.of(
                "Top up with salt water of ",
                salinity(strong),
                share < 0.995
                        ? Sentence.of(" for ", Figure.exact(Measure.SHARE, share), " of the top-off, the rest pure,")
                        : Sentence.of(" in place of pure water"),
                " until ",
                Sentence.figure(Telling.volume(correction.topOff(strong).getAsDouble()), mixing),
                " are in, about ",
                Sentence.figure(evaporating(time.getAsDouble()), evaporation),
                ": it raises the salinity from ",
                salinity(correction.now()),
                " to ",
                salinity(correction.target()),
                " with nothing taken out. Measure on the way, and go back to pure water in time.");
    }

    private Sentence daily(double other, String what) {
        List<Double> volumes = correction.dailySwaps(other);
        if (volumes.isEmpty()) {
            return Sentence.of("Take another water: one of ", salinity(other), " moves it the wrong way.");
        }
        SafeRate rate = correction.rate();
        Sentence act = volumes.size() == 1
                ? Sentence.of(
                        "Take ",
                        Sentence.figure(Telling.volume(volumes.get(0)), mixing),
                        " out and put " + what + " in")
                : Sentence.of(
                        "Take ",
                        Sentence.figure(Telling.volume(volumes.get(0)), mixing),
                        " out and put " + what + " in, and so each day for " + volumes.size() + " days");
        return Sentence.of(
                act,
                ": from ",
                salinity(correction.now()),
                " to ",
                salinity(correction.target()),
                " at no more than ",
                Sentence.figure(salinity(rate.comfortable()), rates),
                " a day, which is comfortable for " + correction.keeping().words() + "; ",
                salinity(rate.ceiling()),
                " is the ceiling.");
    }

    private List<Sentence> remarks() {
        List<Sentence> remarks = new ArrayList<>();
        if (untold()) {
            remarks.add(Sentence.of("If it does stand where it reads: ", decapitalised(move())));
        }
        boolean raise = correction.target() > correction.now();
        List<Double> swaps = correction.dailySwaps(raise ? strong : 0);
        if (raise && !swaps.isEmpty() && correction.topOffTime(strong).isPresent()) {
            remarks.add(Sentence.of("Sooner, by swapping: ", decapitalised(daily(strong, "the stronger water"))));
        }
        if (raise && swaps.isEmpty() && correction.topOffTime(strong).isPresent()) {
            remarks.add(Sentence.of(
                    "To swap some of the water instead, mix it saltier than ", salinity(correction.target()), "."));
        }
        if (correction.target() != correction.now()) {
            remarks.add(Sentence.of(
                    "Before anything, measure again with an instrument you have just checked: salinities that"
                            + " seem to have moved are often a refractometer that has."));
        }
        if (raise && correction.evaporation() > 0) {
            double time = correction.untoppedUntil(correction.target());
            remarks.add(Sentence.of(
                    "With no salt at all: stop the top-off for ",
                    Sentence.figure(evaporating(time), evaporation),
                    ", until ",
                    Telling.volume(correction.evaporation() * time),
                    " are missing. Do it only where the return pump stays under water so long."));
        }
        if (correction.evaporation() > 0) {
            double day = correction.untopped(SafeRate.DAY) - correction.now();
            double ceiling = SafeRate.of(WaterQuantity.SALINITY, correction.keeping(), correction.now(), true)
                    .get(0)
                    .ceiling();
            remarks.add(Sentence.of(
                    "Without top-off it rises by ",
                    salinity(day),
                    " in the first day, and by ",
                    salinity(ceiling),
                    " in ",
                    Sentence.figure(evaporating(correction.untoppedUntil(correction.now() + ceiling)), evaporation),
                    "."));
        }
        return remarks;
    }

    /** As a clause after a colon. */
    private static Sentence decapitalised(Sentence sentence) {
        List<Sentence.Part> parts = new ArrayList<>(sentence.parts());
        if (parts.get(0) instanceof Sentence.Part.Words words) {
            String text = words.text();
            parts.set(0, new Sentence.Part.Words(Character.toLowerCase(text.charAt(0)) + text.substring(1)));
        }
        return new Sentence(parts);
    }

    private List<Advice.Told> figures() {
        List<Advice.Told> figures = new ArrayList<>();
        boolean raise = correction.target() > correction.now();
        correction
                .swap(raise ? strong : 0)
                .ifPresent(volume -> figures.add(
                        new Advice.Told("to swap, were it all at once", swap(volume, raise ? strong : 0), mixing)));
        correction
                .topOff(strong)
                .ifPresent(volume ->
                        figures.add(new Advice.Told("to top up with salt water", Telling.volume(volume), mixing)));
        figures.add(
                new Advice.Told("days at a comfortable pace", Figure.exact(Measure.NUMBER, correction.days()), rates));
        return figures;
    }

    /** A time that goes with one over the evaporation. */
    private Figure evaporating(double time) {
        return evaporationError > 0
                ? Figure.about(Measure.DURATION, time, time * evaporationError / correction.evaporation())
                : Telling.time(time);
    }

    private Figure swap(double volume, double other) {
        double error = correction.swapError(other, nowError);
        return error > 0 ? Figure.about(Measure.VOLUME, volume, error) : Telling.volume(volume);
    }

    private List<Sentence> working() {
        List<Sentence> working = new ArrayList<>();
        boolean raise = correction.target() > correction.now();
        int day = 0;
        for (double volume : correction.dailySwaps(raise ? strong : 0)) {
            day++;
            double to = correction.now() + (correction.target() - correction.now()) * day / correction.days();
            working.add(Sentence.of(
                    "Day " + day + ": swap ", Telling.volume(volume), ", then the salinity is ", salinity(to), "."));
        }
        return working;
    }

    private static Figure salinity(double practical) {
        return Telling.salinity(practical);
    }
}
