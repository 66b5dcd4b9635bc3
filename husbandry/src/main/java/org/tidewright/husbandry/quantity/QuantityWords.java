package org.tidewright.husbandry.quantity;

import static org.tidewright.husbandry.advice.Sentence.figure;

import java.time.Instant;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import org.tidewright.husbandry.advice.Advice;
import org.tidewright.husbandry.advice.Figure;
import org.tidewright.husbandry.advice.Measure;
import org.tidewright.husbandry.advice.Sentence;
import org.tidewright.husbandry.advice.Sources;
import org.tidewright.husbandry.dosing.Aim;
import org.tidewright.husbandry.dosing.DoseAdvice;
import org.tidewright.husbandry.dosing.DoseRule;
import org.tidewright.husbandry.dosing.Settling;
import org.tidewright.husbandry.estimate.Estimate;
import org.tidewright.husbandry.estimate.Known;
import org.tidewright.husbandry.limit.TargetRange;
import org.tidewright.husbandry.solution.SoldSalt;
import org.tidewright.plan.method.WaterQuantity;
import org.tidewright.plan.source.Basis;

/** Says what is known of a quantity and what to do. */
final class QuantityWords {
    /** Chance of being outside at which a level is called so; this project's own. */
    private static final double TOLD_OUTSIDE = 0.8;

    /** Share of a range by which the hour has to differ from the day to be spoken of; this project's own. */
    private static final double TOLD_OF_THE_HOUR = 0.08;

    private static final DateTimeFormatter DAY = DateTimeFormatter.ofPattern("EEEE d MMMM", Locale.ENGLISH);
    private static final DateTimeFormatter SHORT_DAY = DateTimeFormatter.ofPattern("EEE d MMM", Locale.ENGLISH);
    private static final double MINUTE = 60;

    /** Days after which a reading that was set aside is no news any more. */
    private static final double TOLD_BACK = 90;

    private final WaterQuantity quantity;
    private final ZoneId zone;
    private final Instant now;
    private final Estimate.Point point;
    private final Known level;
    private final Known next;
    private final @Nullable TargetRange range;
    private final @Nullable Aim aim;
    private final @Nullable DryPortion dry;
    private final @Nullable DoseAdvice decision;
    private final @Nullable Dosed dosed;
    private final @Nullable Companion companion;
    private final Instant nextTest;
    private final List<Estimate.Judged> readings;
    private final List<Estimate.Judged> probed;
    private final @Nullable ProbeWatch watch;
    private final Sources sources = new Sources();
    private final String log;

    QuantityWords(
            WaterQuantity quantity,
            ZoneId zone,
            Instant now,
            Estimate.Point point,
            Estimate.Point next,
            @Nullable TargetRange range,
            @Nullable Aim aim,
            @Nullable DryPortion dry,
            @Nullable DoseAdvice decision,
            @Nullable Dosed dosed,
            @Nullable Companion companion,
            Instant nextTest,
            List<Estimate.Judged> readings,
            List<Estimate.Judged> probed,
            @Nullable ProbeWatch watch) {
        this.quantity = quantity;
        this.zone = zone;
        this.now = now;
        this.point = point;
        level = dosed == null ? point.level() : point.overDay();
        this.next = dosed == null ? next.level() : next.overDay();
        this.range = range;
        this.aim = aim;
        this.dry = dry;
        this.decision = decision;
        this.dosed = dosed;
        this.companion = companion;
        this.nextTest = nextTest;
        this.readings = readings;
        this.probed = probed;
        this.watch = watch;
        log = sources.key(
                read(readings.size() - probed.size()), Basis.YOUR_LOG, "each weighed by the error of its method");
    }

    private String read(int own) {
        String readings = own + (own == 1 ? " reading of " : " readings of ") + quantity.words();
        if (watch == null) {
            return readings;
        }
        String hours = own == 0 ? capital(quantity.words()) + " by " : readings + ", and ";
        return hours + watch.words() + " by four hours of each day";
    }

    // ── a few words for the list ──

    String state(@Nullable Settling settling) {
        if (lastIsOff()) {
            return isWatched() ? "look at it now" : "test again";
        }
        if (decision instanceof DoseAdvice.Correct) {
            return "bring it back";
        } else if (decision instanceof DoseAdvice.Move) {
            return "move the dose";
        } else if (settling != null) {
            return "settling until " + SHORT_DAY.format(settling.until().atZone(zone));
        }
        if (isOverdue()) {
            return isSilent() ? "its probe is silent" : "test today";
        }
        String steady = isOutside() ? outside() : "steady; ";
        return steady + (isWatched() ? "read by its probe" : "test by " + SHORT_DAY.format(nextTest.atZone(zone)));
    }

    private String outside() {
        return Objects.requireNonNull(range).holds(next.value())
                ? "outside its range, comes back; "
                : "outside its range; ";
    }

    QuantityStudy.Call call(@Nullable Settling settling) {
        if (lastIsOff() || decision instanceof DoseAdvice.Correct) {
            return QuantityStudy.Call.HANDS;
        } else if (decision instanceof DoseAdvice.Move || isOutsideUndosed()) {
            return QuantityStudy.Call.DECIDE;
        } else if (isOverdue()) {
            return QuantityStudy.Call.TEST;
        }
        return settling != null ? QuantityStudy.Call.LEAVE : QuantityStudy.Call.NONE;
    }

    private boolean isOutsideUndosed() {
        return decision == null && isOutside();
    }

    /** Told from noise to be outside, and not merely because nobody looked for long. */
    private boolean isOutside() {
        return range != null && !range.holds(level.value()) && outside(level) > enough();
    }

    /** A poison is believed as soon as it is more likely there than not. */
    private double enough() {
        return switch (quantity) {
            case AMMONIA, NITRITE -> 0.5;
            default -> TOLD_OUTSIDE;
        };
    }

    String headline(@Nullable Settling settling) {
        String words = quantity.words();
        return switch (call(settling)) {
            case HANDS -> lastIsOff() ? again() : "Bring " + words + " back into its range.";
            case DECIDE ->
                decision instanceof DoseAdvice.Move
                        ? "Move the dose of " + name() + "."
                        : capital(words) + " is outside its range.";
            case TEST ->
                isSilent() ? "See to " + watched() + ", or test " + words + " today." : "Test " + words + " today.";
            case LEAVE ->
                "Leave the dose of " + name() + " alone until "
                        + day(Objects.requireNonNull(settling).until()) + ".";
            case NONE -> "";
        };
    }

    private boolean lastIsOff() {
        return readings.get(readings.size() - 1).standing() == Estimate.Standing.SET_ASIDE;
    }

    private String again() {
        return isWatched()
                ? "Look at the water and at " + watched() + " now."
                : "Test " + quantity.words() + " again before you act.";
    }

    private boolean isWatched() {
        return watch != null && watch.live();
    }

    /** Whether a probe told it last and does not speak any more. */
    private boolean isSilent() {
        return watch != null
                && !watch.live()
                && readings.get(readings.size() - 1)
                        .reading()
                        .method()
                        .key()
                        .equals(watch.probe().method());
    }

    private String watched() {
        return Objects.requireNonNull(watch).words();
    }

    private boolean isOverdue() {
        return !isWatched() && !nextTest.isAfter(now.plusSeconds((long) MINUTE));
    }

    private double outside(Known level) {
        TargetRange held = Objects.requireNonNull(range);
        return level.chanceBelow(held.least()) + 1 - level.chanceBelow(held.most());
    }

    // ── advice ──

    Advice advice() {
        List<Sentence> remarks = new ArrayList<>();
        List<String> cautions = new ArrayList<>();
        Sentence lead = lead(remarks, cautions);
        setAside(remarks);
        List<Advice.Told> figures = new ArrayList<>();
        figures.add(new Advice.Told("Now, estimated", Told.level(quantity, point.level()), log));
        hour(remarks, figures);
        if (range != null) {
            sources.key(capital(quantity.words()) + " held between two values", range.basis(), range.detail());
        }
        return new Advice(lead, remarks, figures, List.of(), cautions, sources.all());
    }

    /** What is dosed is held over the day; a test at one hour shows the level of that hour. */
    private void hour(List<Sentence> remarks, List<Advice.Told> figures) {
        if (range != null
                && Math.abs(point.level().value() - level.value())
                        > TOLD_OF_THE_HOUR * (range.most() - range.least())) {
            figures.add(new Advice.Told("Over the whole day", Told.level(quantity, level), log));
            remarks.add(Sentence.of(
                    "At this hour " + quantity.words() + " stands at ",
                    Told.level(quantity, point.level()),
                    ", over the whole day at ",
                    Told.level(quantity, level),
                    ": light and doses move it by the hour. It is the day that is held in its range."));
        }
    }

    private Sentence lead(List<Sentence> remarks, List<String> cautions) {
        if (lastIsOff()) {
            return again(remarks, cautions);
        }
        return decided(remarks, cautions);
    }

    private Sentence again(List<Sentence> remarks, List<String> cautions) {
        Estimate.Judged last = readings.get(readings.size() - 1);
        if (isWatched()) {
            return Sentence.of(
                    "Look at the water and at " + watched() + " now: it last showed ",
                    Told.level(quantity, last.reading().value()),
                    ", " + errors(last.off())
                            + " errors off all before. Until more of its hours agree, that is set aside.");
        }
        remarks.add(decided(new ArrayList<>(), cautions));
        return Sentence.of(
                "Test " + quantity.words() + " again before you act: the reading of ",
                Told.level(quantity, last.reading().value()),
                " stands " + errors(last.off()) + " errors off all others. Until then it is set aside.");
    }

    private Sentence decided(List<Sentence> remarks, List<String> cautions) {
        if (decision instanceof DoseAdvice.Settle settle) {
            return settling(settle.settling(), remarks);
        } else if (decision instanceof DoseAdvice.Move move) {
            return move(move, remarks, cautions);
        } else if (decision instanceof DoseAdvice.Correct correct) {
            return correct(correct, remarks, cautions);
        } else if (isOverdue() && !isOutside()) {
            return due();
        } else if (decision instanceof DoseAdvice.Leave leave) {
            return leave(leave);
        }
        return undosed(remarks, cautions);
    }

    private Sentence due() {
        double last = readings.get(readings.size() - 1).reading().time();
        long days = Math.max(1, Math.round(point.time() - last));
        if (isSilent()) {
            return Sentence.of(
                    "See to " + watched() + ", or test " + quantity.words() + " today: it has said nothing for " + days
                            + (days == 1 ? " day" : " days") + ", and the estimate has widened to ",
                    figure(Told.level(quantity, point.level()), log),
                    ".");
        }
        return Sentence.of(
                "Test " + quantity.words() + " today: the last test is " + days + (days == 1 ? " day" : " days")
                        + " old, and the estimate has widened to ",
                figure(Told.level(quantity, level), log),
                ".");
    }

    private Sentence leave(DoseAdvice.Leave leave) {
        TargetRange held = Objects.requireNonNull(range);
        if (!held.holds(level.value()) && held.holds(next.value())) {
            return Sentence.of(
                    "Leave the dose of " + name() + " alone: " + quantity.words() + " stands at ",
                    figure(Told.level(quantity, level), log),
                    ", outside ",
                    range(),
                    ", and comes back by itself. By the next test, on " + day(nextTest) + ", ",
                    Told.level(quantity, next),
                    " is to be expected.");
        }
        String reason = leave.chance() > DoseRule.TOO_LIKELY
                ? "it meets the use as well as your readings can tell. By the next test, on "
                : "by the next test, on ";
        return Sentence.of(
                "Leave the dose of " + name() + " alone: " + reason + day(nextTest) + ", the chance that "
                        + quantity.words() + " leaves ",
                range(),
                " is ",
                figure(Figure.exact(Measure.SHARE, Math.max(0.01, leave.chance())), chance()),
                ".");
    }

    private Sentence settling(Settling settling, List<Sentence> remarks) {
        remarks.add(pace(settling));
        return Sentence.of(
                "Leave the dose of " + name() + " alone until " + day(settling.until()) + ". ", moved(settling));
    }

    private Sentence moved(Settling settling) {
        return Sentence.of(
                "You " + (settling.change() > 0 ? "raised" : "lowered") + " it on " + day(settling.moved()) + " by ",
                Told.use(quantity, Math.abs(settling.change())),
                settling.told()
                        ? ", and your tests cannot tell that from noise before."
                        : ", which is less than your tests can tell within four weeks; after that day go by the level alone.");
    }

    /** The reason for the headline, which the lead of the advice may hold already. */
    Sentence why(Advice advice, @Nullable Settling settling) {
        return call(settling) == QuantityStudy.Call.LEAVE
                ? moved(Objects.requireNonNull(settling))
                : advice.lead().withoutSources();
    }

    private Sentence pace(Settling settling) {
        String settlingSource = sources.key(
                "A change counts as told at 95 in 100, with a chance of 80 in 100",
                Basis.COMMON_PRACTICE,
                "in statistics; the errors of tests to come follow from those of your methods and from how your use wanders");
        Sentence.Part reference = new Sentence.Part.Reference(settlingSource);
        return settling.daily().isBefore(settling.until())
                ? Sentence.of(
                        "With a test a day it would be told by " + day(settling.daily())
                                + ". A change before that is a change on noise.",
                        reference)
                : Sentence.of(
                        "More tests would not tell it sooner. A change before that is a change on noise.", reference);
    }

    private Sentence move(DoseAdvice.Move move, List<Sentence> remarks, List<String> cautions) {
        Dosed moved = Objects.requireNonNull(dosed);
        double amount = moved.volume(move.dose());
        String way = amount > moved.amount() ? "Raise " : "Lower ";
        remarks.add(Sentence.of(
                "The system uses ",
                Told.use(quantity, point.use()),
                ", and all doses bring ",
                Told.use(quantity, point.dosed()),
                ": left as they are it " + (point.change().value() < 0 ? "falls" : "rises") + " by ",
                Told.use(quantity, size(point.change())),
                ". The new dose meets the use and leads back to where you hold it within about a week."));
        if (companion != null) {
            remarks.add(pair(companion));
        }
        caution(cautions);
        return Sentence.of(
                way + moved.words() + " from ",
                moved.figure(moved.amount()),
                " to ",
                moved.figure(amount),
                ", and then leave it. Left as it is, the chance that " + quantity.words() + " is outside ",
                range(),
                " on " + day(nextTest) + " is ",
                figure(Figure.exact(Measure.SHARE, move.chance()), chance()),
                ".");
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

    private Sentence correct(DoseAdvice.Correct correct, List<Sentence> remarks, List<String> cautions) {
        Dosed moved = Objects.requireNonNull(dosed);
        caution(cautions);
        if (correct.lift() < 0) {
            remarks.add(Sentence.of("It falls by what the system uses: ", Told.use(quantity, point.use()), "."));
            return Sentence.of(
                    "Lower " + moved.words() + " to ",
                    moved.figure(moved.volume(correct.dose())),
                    " and let " + quantity.words() + " come down: it stands at ",
                    Told.level(quantity, level),
                    ", above ",
                    range(),
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
                Told.level(quantity, level),
                ", below ",
                range(),
                ".");
    }

    /** Of what is moved anyway, or of a dry salt where that is not given by hand. */
    private Sentence portion(Dosed moved, double lift) {
        return moved.isGivenByHand()
                ? Sentence.of(
                        Figure.exact(Measure.DOSE, moved.volume(lift)),
                        " of " + moved.solution().name())
                : grams(Objects.requireNonNull(dry), lift);
    }

    private static Sentence grams(DryPortion dry, double lift) {
        return Sentence.of(
                Figure.exact(Measure.SMALL_MASS, dry.mass(lift)),
                " of " + SoldSalt.words(dry.salt()) + ", dissolved in pure water,");
    }

    /** Without a solution of it, by the gram: what brings it back, and what would hold it. */
    private Sentence byTheGram(DryPortion salt, List<Sentence> remarks, List<String> cautions) {
        Aim held = Objects.requireNonNull(aim);
        double lift = held.value() - level.value();
        int days = (int) Math.max(1, Math.ceil(lift / held.safeRate() - 1e-9));
        add(cautions, "Dose into strong flow, in several portions, and read the label of the salt first.");
        if (point.use().value() > 0) {
            remarks.add(Sentence.of(
                    "The system uses ",
                    Told.use(quantity, point.use()),
                    ": ",
                    Figure.exact(Measure.SMALL_MASS, salt.mass(point.use().value())),
                    " of it a day would hold it there. The page Solutions mixes it for a pump."));
        }
        return Sentence.of(
                "Bring " + quantity.words() + " up: ",
                grams(salt, lift / days),
                " each day for " + days + (days == 1 ? " day" : " days") + ". It stands at ",
                figure(Told.level(quantity, level), log),
                ", below ",
                range(),
                ".");
    }

    private Sentence undosed(List<Sentence> remarks, List<String> cautions) {
        if (range == null) {
            return Sentence.of(
                    capital(quantity.words()) + " stands at ",
                    figure(Told.level(quantity, level), log),
                    isWatched()
                            ? ". Compare " + watched() + " with another test " + by(nextTest) + "."
                            : ". Test it by " + day(nextTest) + ".");
        }
        double outside = outside(level);
        if (isOutside()) {
            boolean over = level.value() > (range.least() + range.most()) / 2;
            if (!over && dry != null) {
                return byTheGram(dry, remarks, cautions);
            }
            return Sentence.of(
                    act(over) + " It stands at ",
                    figure(Told.level(quantity, level), log),
                    over ? ", above " : ", below ",
                    range(),
                    ".");
        }
        double chance = Math.max(outside, outside(next));
        String test =
                isWatched() ? "Compare " + watched() + " with another test " : "Test " + quantity.words() + " again ";
        return Sentence.of(
                (chance <= DoseRule.TOO_LIKELY ? "Leave it as it is: " : test + by(nextTest) + ": ") + quantity.words()
                        + " stands at ",
                figure(Told.level(quantity, level), log),
                ", and the chance that it is outside ",
                range(),
                isWatched() ? " now or tomorrow is " : " then is ",
                figure(Figure.exact(Measure.SHARE, Math.max(0.01, chance)), chance()),
                ".");
    }

    /** What moves a quantity that is not dosed. */
    private String act(boolean over) {
        return switch (quantity) {
            case NITRATE, PHOSPHATE ->
                over
                        ? "Feed less or export more, one of them: Feed and export shows what each would do."
                        : "Feed a little more or export less: Feed and export shows what each would do.";
            case SALINITY ->
                over ? "Bring salinity down slowly with fresh water." : "Bring salinity up slowly with new water.";
            case TEMPERATURE ->
                over ? "Cool the water slowly, no ice." : "Warm the water slowly; look at the heaters first.";
            case PH -> "Look at the room's air before you touch the pH: the Day page shows what a window would do.";
            case AMMONIA, NITRITE -> "Feed nothing, change water, and find what died or which filter stopped.";
            case OXYGEN -> over ? "Nothing is wrong with much oxygen." : "Move the surface and find what stopped.";
            case ALKALINITY, CALCIUM, MAGNESIUM ->
                over
                        ? "Change water with less of it, in parts."
                        : "Dose it, or change water with more of it, in parts.";
        };
    }

    private void setAside(List<Sentence> remarks) {
        readings.subList(0, readings.size() - 1).stream()
                .filter(judged -> judged.standing() == Estimate.Standing.SET_ASIDE)
                .filter(judged -> judged.reading().time() > point.time() - TOLD_BACK)
                .filter(judged -> !probed.contains(judged))
                .reduce((before, after) -> after)
                .ifPresent(judged -> remarks.add(Sentence.of(
                        "A reading of ",
                        Told.level(quantity, judged.reading().value()),
                        " stands " + errors(judged.off()) + " errors off all others and was set aside.")));
    }

    private static void add(List<String> cautions, String caution) {
        if (!cautions.contains(caution)) {
            cautions.add(caution);
        }
    }

    private void caution(List<String> cautions) {
        Dosed moved = Objects.requireNonNull(dosed);
        if (moved.salt() == null) {
            add(
                    cautions,
                    "Open the bottle of carbon dioxide with care, in an aired room, and let the effluent drip where its carbon"
                            + " dioxide can leave; look at the pH of the chamber after a day.");
            limits(cautions);
            return;
        }
        switch (moved.salt()) {
            case SODIUM_CARBONATE, SODIUM_HYDROXIDE, CALCIUM_HYDROXIDE ->
                add(
                        cautions,
                        "The solution burns skin and eyes: gloves and goggles, out of reach of children, into strong"
                                + " flow and slowly. The label comes before this page.");
            default ->
                add(
                        cautions,
                        "Dose into strong flow, in several portions, the two parts at different times and places.");
        }
        limits(cautions);
    }

    private void limits(List<String> cautions) {
        if (quantity == WaterQuantity.ALKALINITY) {
            add(cautions, "Never move alkalinity by more than 1 dKH in a day, and stop where the water turns cloudy.");
        }
    }

    // ── pieces ──

    private static Known size(Known known) {
        return new Known(Math.abs(known.value()), known.standardError());
    }

    private String name() {
        return Objects.requireNonNull(dosed).words();
    }

    private Sentence range() {
        TargetRange held = Objects.requireNonNull(range);
        return Sentence.of(Told.level(quantity, held.least()), " to ", Told.level(quantity, held.most()));
    }

    private String chance() {
        return sources.key(
                "Chances of what a level will be",
                Basis.COMPUTED,
                "from your readings, doses and water changes, with how much your use wandered so far");
    }

    private String by(Instant at) {
        return at.isAfter(now.plusSeconds((long) MINUTE)) ? "by " + day(at) : "today";
    }

    private String day(Instant at) {
        return DAY.format(at.atZone(zone));
    }

    private static String errors(double off) {
        return String.format(Locale.ROOT, "%.1f", Math.abs(off));
    }

    private static String capital(String words) {
        // pH stays pH.
        return words.equals("pH") ? words : words.substring(0, 1).toUpperCase(Locale.ROOT) + words.substring(1);
    }
}
