package org.tidewright.husbandry.mixing;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.tidewright.husbandry.advice.Advice;
import org.tidewright.husbandry.advice.Figure;
import org.tidewright.husbandry.advice.Measure;
import org.tidewright.husbandry.advice.Sentence;
import org.tidewright.husbandry.advice.Sources;
import org.tidewright.husbandry.limit.Keeping;
import org.tidewright.husbandry.limit.SafeRate;
import org.tidewright.husbandry.mixing.Shift.Pace;
import org.tidewright.husbandry.mixing.WaterChange.Split;
import org.tidewright.plan.method.WaterQuantity;

/** Tells what a change of water does, and whether it shocks. */
final class ChangeWords {
    private static final double HOUR = 3600;

    private final WaterChange change;
    private final Keeping keeping;
    private final Sources sources = new Sources();
    private final String rates = Telling.rates(sources);
    private final String mixing = Telling.mixing(sources);

    ChangeWords(WaterChange change, Keeping keeping) {
        this.change = change;
        this.keeping = keeping;
    }

    Advice advice() {
        return new Advice(
                lead(), remarks(), figures(), working(), List.of(Telling.ELECTRICITY, Telling.SIPHON), sources.all());
    }

    private Sentence lead() {
        List<Shift> shifts = change.shifts();
        if (shifts.isEmpty()) {
            return Sentence.of(
                    "Measure both waters before you pour: nothing is known of both, so nothing can be said.");
        }
        Shift worst = worst(shifts);
        if (worst != null) {
            return tooFast(worst, true);
        }
        boolean comfortable = shifts.stream().noneMatch(this::isFast);
        return Sentence.of(
                "Go ahead with ",
                Telling.volume(change.volume()),
                ": of what is known nothing moves by more than " + keeping.words()
                        + (comfortable ? " find comfortable in a day." : " bear in a day."));
    }

    private boolean isFast(Shift shift) {
        return shift.pace(keeping).compareTo(Pace.BRISK) >= 0;
    }

    /**
     * The one to lead with: of those that are borne worst, the one that asks for the longest wait; null where the change may
     * go ahead. Temperature comes last, since it is mended before the pouring, and nitrate that falls no faster than the
     * ceiling is what a change is made for.
     */
    private @Nullable Shift worst(List<Shift> shifts) {
        return shifts.stream()
                .filter(this::isFast)
                .filter(shift -> shift.quantity() != WaterQuantity.NITRATE || shift.pace(keeping) == Pace.SHOCK)
                .max(Comparator.comparing((Shift shift) -> shift.quantity() != WaterQuantity.TEMPERATURE)
                        .thenComparing(shift -> shift.pace(keeping))
                        .thenComparingDouble(this::waiting))
                .orElse(null);
    }

    private double waiting(Shift shift) {
        return change.split(shift.quantity(), keeping)
                .map(split -> split.parts() * split.apart())
                .orElse(Double.POSITIVE_INFINITY);
    }

    private Sentence tooFast(Shift shift, boolean act) {
        WaterQuantity quantity = shift.quantity();
        Optional<Split> split = change.split(quantity, keeping);
        Sentence reason = Sentence.of(
                "in one go it would " + (shift.step() > 0 ? "raise the " : "lower the ") + quantity.words() + " by ",
                Telling.step(quantity, shift.step()),
                ", and ",
                limits(shift));
        if (quantity == WaterQuantity.TEMPERATURE) {
            TemperatureMatch match =
                    new TemperatureMatch(change, shift.rates(keeping).get(0).comfortable());
            Sentence range = Sentence.of(
                    "Bring the new water to between ",
                    Figure.exact(Measure.TEMPERATURE, match.coldest()),
                    " and ",
                    Figure.exact(Measure.TEMPERATURE, match.warmest()),
                    " before you pour: ");
            return Sentence.of(range, reason, orSplit(split));
        } else if (split.isEmpty()) {
            return Sentence.of("Do not pour it: ", reason, " Not even fifty parts keep that pace; mend the new water.");
        }
        String better = shift.pace(keeping) == Pace.SHOCK ? "Split it into " : "Better split it into ";
        return Sentence.of(act ? better : "For " + quantity.words() + ", ", parts(split.get()), ": ", reason);
    }

    private Sentence orSplit(Optional<Split> split) {
        return split.map(parts -> Sentence.of(" Or pour it in ", parts(parts), "."))
                .orElse(Sentence.of(" No number of parts helps."));
    }

    private Sentence parts(Split split) {
        return Sentence.of(
                split.parts() + " parts of ",
                Telling.volume(change.volume() / split.parts()),
                ", " + (split.apart() == HOUR ? "an hour" : "a day") + " apart");
    }

    private Sentence limits(Shift shift) {
        List<SafeRate> broken = shift.rates(keeping).stream()
                .filter(rate -> !rate.isComfortable(shift.step()))
                .toList();
        SafeRate rate = broken.get(broken.size() - 1);
        return Sentence.of(
                Telling.step(shift.quantity(), rate.comfortable()),
                " " + Telling.per(rate.span()) + " is comfortable for " + keeping.words() + ", ",
                Sentence.figure(Telling.step(shift.quantity(), rate.ceiling()), rates),
                " the ceiling.");
    }

    private List<Sentence> remarks() {
        List<Sentence> remarks = new ArrayList<>();
        List<Shift> shifts = change.shifts();
        Shift worst = worst(shifts);
        for (Shift shift : shifts) {
            if (!shift.equals(worst) && isFast(shift)) {
                remarks.add(tooFast(shift, false));
            }
        }
        if (worst != null && worst.quantity() != WaterQuantity.TEMPERATURE) {
            remarks.add(Sentence.of("The heater must hold the temperature between the parts, and each part is measured "
                    + "before the next: parts poured further apart end a little short of the change in one go."));
        }
        if (!change.unknown().isEmpty()) {
            remarks.add(Sentence.of("Not known of both waters and so not of the mixture: "
                    + change.unknown().stream().map(WaterQuantity::words).collect(Collectors.joining(", "))
                    + "."));
        }
        Telling.assumed(change).ifPresent(remarks::add);
        return remarks;
    }

    private List<Advice.Told> figures() {
        KnownWater after = change.after().water();
        return change.shifts().stream()
                .map(Shift::quantity)
                .map(quantity -> new Advice.Told(
                        quantity.words() + " after the change",
                        Telling.value(quantity, after.value(quantity).orElseThrow(), after.error(quantity)),
                        mixing))
                .toList();
    }

    private List<Sentence> working() {
        Portion stays = new Portion(
                change.system().volume() - change.volume(), change.system().water());
        Portion put = new Portion(change.volume(), change.newWater());
        List<Sentence> working = new ArrayList<>(List.of(
                Sentence.of(
                        Telling.volume(stays.volume()),
                        " that stay weigh ",
                        Figure.exact(Measure.MASS, stays.mass()),
                        ", ",
                        Telling.volume(put.volume()),
                        " that come ",
                        Figure.exact(Measure.MASS, put.mass()),
                        "."),
                Sentence.of(
                        "New is ",
                        Figure.exact(Measure.SHARE, change.share()),
                        " of the mass: salinity goes by it, and temperature by the heat; what is told per litre adds up"
                                + " as volume times reading.")));
        change.shifts().forEach(shift -> shift.rates(keeping).forEach(rate -> working.add(pace(shift, rate))));
        return working;
    }

    private Sentence pace(Shift shift, SafeRate rate) {
        WaterQuantity quantity = shift.quantity();
        return Sentence.of(
                "In one go " + quantity.words() + (shift.step() < 0 ? " falls by " : " rises by "),
                Telling.step(quantity, shift.step()),
                "; ",
                Telling.step(quantity, rate.comfortable()),
                " " + Telling.per(rate.span()) + " is comfortable for " + keeping.words() + ", ",
                Sentence.figure(Telling.step(quantity, rate.ceiling()), rates),
                " the ceiling.");
    }
}
