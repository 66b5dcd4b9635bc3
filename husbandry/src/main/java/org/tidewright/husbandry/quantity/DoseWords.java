package org.tidewright.husbandry.quantity;

import static org.tidewright.husbandry.advice.Sentence.figure;

import java.util.List;
import java.util.Objects;
import java.util.Set;
import org.tidewright.husbandry.advice.Figure;
import org.tidewright.husbandry.advice.Measure;
import org.tidewright.husbandry.advice.Sentence;
import org.tidewright.husbandry.advice.Sources;
import org.tidewright.husbandry.dosing.DoseAdvice;
import org.tidewright.husbandry.dosing.DoseRule;
import org.tidewright.husbandry.dosing.Settling;
import org.tidewright.husbandry.estimate.Known;
import org.tidewright.husbandry.limit.TargetRange;
import org.tidewright.plan.method.WaterQuantity;
import org.tidewright.plan.model.Salt;
import org.tidewright.plan.source.Basis;

/** Says what to do about a dose: how much of what, with what to mind at the act. */
final class DoseWords {
    /** Chance that something is missing at which it is said; this project's own. */
    private static final double TOLD = 0.95;

    /** Share of the use that water changes have to bring to be spoken of; this project's own. */
    private static final double WORTH_A_WORD = 0.1;

    private final Situation seen;
    private final WaterQuantity quantity;
    private final Sources sources;
    private final String log;
    private final List<Sentence> remarks;
    private final Set<String> cautions;

    /**
     * Words about a situation.
     *
     * @param log the key of the journal in the sources
     * @param remarks to which is added what bears on the sentence that is said
     * @param cautions likewise
     */
    DoseWords(Situation seen, Sources sources, String log, List<Sentence> remarks, Set<String> cautions) {
        this.seen = seen;
        quantity = seen.quantity();
        this.sources = sources;
        this.log = log;
        this.remarks = remarks;
        this.cautions = cautions;
    }

    Sentence leave(DoseAdvice.Leave leave) {
        TargetRange held = seen.held();
        if (!held.holds(seen.level().value()) && held.holds(seen.next().value())) {
            return Sentence.of(
                    "Leave " + seen.doseWords() + " alone: " + quantity.words() + " stands at ",
                    figure(Told.level(quantity, seen.level()), log),
                    ", outside ",
                    seen.rangeWords(),
                    ", and comes back by itself. By the next test, on " + seen.day(seen.nextTest()) + ", ",
                    Told.level(quantity, seen.next()),
                    " is to be expected.");
        }
        if (leave.chance() > DoseRule.TOO_LIKELY && dosed().isFull() && lift() > 0) {
            return noMore(leave);
        }
        String reason = leave.chance() > DoseRule.TOO_LIKELY
                ? "it meets the use as well as your readings can tell. By the next test, on "
                : "by the next test, on ";
        return Sentence.of(
                "Leave " + seen.doseWords() + " alone: " + reason + seen.day(seen.nextTest()) + ", the chance that "
                        + quantity.words() + " leaves ",
                seen.rangeWords(),
                " is ",
                figure(Figure.exact(Measure.SHARE, Math.max(0.01, leave.chance())), chance()),
                ".");
    }

    Sentence settle(Settling settling) {
        remarks.add(pace(settling));
        return Sentence.of(
                "Leave " + seen.doseWords() + " alone until " + seen.day(settling.until()) + ". ",
                moved(seen, settling));
    }

    /** What the keeper did that settles. */
    static Sentence moved(Situation seen, Settling settling) {
        return Sentence.of(
                "You " + (settling.change() > 0 ? "raised" : "lowered") + " it on " + seen.day(settling.moved())
                        + " by ",
                Told.use(seen.quantity(), Math.abs(settling.change())),
                settling.told()
                        ? ", and your tests cannot tell that from noise before."
                        : ", which is less than your tests can tell within four weeks; after that day go by the level alone.");
    }

    private Sentence pace(Settling settling) {
        String settlingSource = sources.key(
                "A change counts as told at 95 in 100, with a chance of 80 in 100",
                Basis.COMMON_PRACTICE,
                "in statistics; the errors of tests to come follow from those of your methods and from how your use wanders");
        Sentence.Part reference = new Sentence.Part.Reference(settlingSource);
        return settling.daily().isBefore(settling.until())
                ? Sentence.of(
                        "With a test a day it would be told by " + seen.day(settling.daily())
                                + ". A change before that is a change on noise.",
                        reference)
                : Sentence.of(
                        "More tests would not tell it sooner. A change before that is a change on noise.", reference);
    }

    Sentence move(DoseAdvice.Move move) {
        Dosed moved = dosed();
        double amount = moved.volume(move.dose());
        String way = amount > moved.amount() ? "Raise " : "Lower ";
        remarks.add(Sentence.of(
                "The system uses ",
                Told.use(quantity, seen.point().use()),
                ", and all doses bring ",
                Told.use(quantity, seen.point().dosed()),
                renewed(),
                ": left as they are it " + (seen.point().change().value() < 0 ? "falls" : "rises") + " by ",
                Told.use(quantity, size(seen.point().change())),
                ". The new dose meets the use and leads back to where you hold it within about a week."));
        if (seen.companion() != null) {
            remarks.add(pair(seen.companion()));
        }
        caution();
        return Sentence.of(
                way + moved.words() + " from ",
                moved.figure(moved.amount()),
                " to ",
                moved.figure(amount),
                ", and then leave it. Left as it is, the chance that " + quantity.words() + " is outside ",
                seen.rangeWords(),
                " on " + seen.day(seen.nextTest()) + " is ",
                figure(Figure.exact(Measure.SHARE, move.chance()), chance()),
                ".");
    }

    /** What water changes bring, where that is worth a word. */
    private Sentence renewed() {
        double brings = seen.point().renewed();
        return Math.abs(brings) < WORTH_A_WORD * Math.abs(seen.point().use().value())
                ? Sentence.of("")
                : Sentence.of(", water changes ", Told.use(quantity, brings));
    }

    private Sentence pair(Companion calcium) {
        String ratio = sources.key(
                "One of calcium for two of alkalinity",
                Basis.COMPUTED,
                "skeletons are carbonate of calcium with a little magnesium");
        return Sentence.of(
                "Move calcium with it, from ",
                calcium.dosed().figure(calcium.dosed().amount()),
                " to ",
                calcium.dosed().figure(calcium.amount()),
                " of " + calcium.dosed().solution().name()
                        + ", unless it has a move of its own: what builds skeletons takes both.",
                new Sentence.Part.Reference(ratio));
    }

    Sentence correct(DoseAdvice.Correct correct) {
        Dosed moved = dosed();
        caution();
        if (correct.lift() < 0) {
            remarks.add(Sentence.of(
                    "It falls by what the system uses: ",
                    Told.use(quantity, seen.point().use()),
                    "."));
            return Sentence.of(
                    "Lower " + moved.words() + " to ",
                    moved.figure(moved.volume(correct.dose())),
                    " and let " + quantity.words() + " come down: it stands at ",
                    Told.level(quantity, seen.level()),
                    ", above ",
                    seen.rangeWords(),
                    ".");
        }
        remarks.add(Sentence.of(
                "Then set " + moved.words() + " to ",
                moved.figure(moved.volume(correct.dose())),
                ", which meets the use. No day lifts it by more than is comfortable.",
                new Sentence.Part.Reference(sources.key(
                        "How fast water may be changed on purpose",
                        Basis.COMMON_PRACTICE,
                        "careful figures among keepers; no trial stands behind them"))));
        return Sentence.of(
                "Bring " + quantity.words() + " back first: ",
                portion(moved, correct.lift() / correct.days()),
                " on top each day for " + correct.days() + (correct.days() == 1 ? " day" : " days")
                        + ", in several portions. It stands at ",
                Told.level(quantity, seen.level()),
                ", below ",
                seen.rangeWords(),
                ".");
    }

    /** Where more of it would do harm: what to do beside it. */
    private Sentence noMore(DoseAdvice.Leave leave) {
        remarks.add(Sentence.of(
                "Bring up " + quantity.words() + " beside it: ",
                grams(Objects.requireNonNull(seen.dry()), lift() / days()),
                " each day for " + daysWords() + ", or a solution that the page Solutions mixes."));
        return Sentence.of(
                "Dose no more of " + dosed().words() + " than now, ",
                dosed().figure(dosed().amount()),
                ": more than evaporates makes the water rise and thins it. The chance that " + quantity.words()
                        + " is outside ",
                seen.rangeWords(),
                " on " + seen.day(seen.nextTest()) + " is ",
                figure(Figure.exact(Measure.SHARE, leave.chance()), chance()),
                ".");
    }

    /** Of what is moved anyway, or of a dry salt where that is not given by hand. */
    private Sentence portion(Dosed moved, double lift) {
        return moved.isGivenByHand()
                ? Sentence.of(
                        Figure.exact(Measure.DOSE, moved.volume(lift)),
                        " of " + moved.solution().name())
                : grams(Objects.requireNonNull(seen.dry()), lift);
    }

    private Sentence grams(DryPortion dry, double lift) {
        cautions.add("Dose into strong flow, in several portions, and read the label of the salt first.");
        if (dry.salt() == Salt.CALCIUM_CHLORIDE) {
            cautions.add(
                    "Calcium chloride heats the water it is stirred into: goggles on, the salt into the water and slowly.");
        }
        limits();
        return Sentence.of(
                Figure.exact(Measure.SMALL_MASS, dry.mass(lift)),
                " of " + dry.salt().words() + ", dissolved in pure water,");
    }

    /** Without a solution of it, by the gram: what brings it back, and what would hold it. */
    Sentence byTheGram(DryPortion salt) {
        Known missing = missing();
        if (1 - missing.chanceBelow(0) > TOLD) {
            remarks.add(Sentence.of(
                    "To hold it there takes ",
                    Told.use(quantity, missing),
                    ", or ",
                    Figure.exact(Measure.SMALL_MASS, salt.mass(missing.value())),
                    " of the salt a day. The page Solutions mixes it for a pump."));
        }
        return Sentence.of(
                "Bring " + quantity.words() + " up: ",
                grams(salt, lift() / days()),
                " each day for " + daysWords() + ". It stands at ",
                figure(Told.level(quantity, seen.level()), log),
                ", below ",
                seen.rangeWords(),
                ".");
    }

    private void caution() {
        Dosed moved = dosed();
        if (moved.salt() == null) {
            cautions.add(
                    "Open the bottle of carbon dioxide with care, in an aired room, and let the effluent drip where its carbon"
                            + " dioxide can leave; look at the pH of the chamber after a day.");
            limits();
            return;
        }
        switch (moved.salt()) {
            case SODIUM_CARBONATE, SODIUM_HYDROXIDE, CALCIUM_HYDROXIDE ->
                cautions.add(
                        "The solution burns skin and eyes: gloves and goggles, out of reach of children, into strong"
                                + " flow and slowly. The label comes before this page.");
            default ->
                cautions.add(
                        "Dose into strong flow, in several portions, the two parts at different times and places.");
        }
        limits();
    }

    private void limits() {
        if (quantity == WaterQuantity.ALKALINITY) {
            cautions.add("Never move alkalinity by more than 1 dKH in a day, and stop where the water turns cloudy.");
        }
    }

    /** What lacks of the aim. */
    private double lift() {
        return Objects.requireNonNull(seen.aim()).value() - seen.level().value();
    }

    /** Over which it is brought up without haste. */
    private int days() {
        return (int) Math.max(
                1, Math.ceil(lift() / Objects.requireNonNull(seen.aim()).safeRate() - 1e-9));
    }

    private String daysWords() {
        return days() + (days() == 1 ? " day" : " days");
    }

    private static Known size(Known known) {
        return new Known(Math.abs(known.value()), known.standardError());
    }

    private Known missing() {
        return Objects.requireNonNull(seen.missing());
    }

    private Dosed dosed() {
        return Objects.requireNonNull(seen.dosed());
    }

    private String chance() {
        return chance(sources);
    }

    /** The key of how chances are found. */
    static String chance(Sources sources) {
        return sources.key(
                "Chances of what a level will be",
                Basis.COMPUTED,
                "from your readings, doses and water changes, with how much your use wandered so far");
    }
}
