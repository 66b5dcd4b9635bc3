package org.tidewright.husbandry.quantity;

import static org.tidewright.husbandry.advice.Sentence.figure;

import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.Set;
import org.tidewright.husbandry.advice.Advice;
import org.tidewright.husbandry.advice.Sentence;
import org.tidewright.husbandry.advice.Sources;
import org.tidewright.husbandry.dosing.DoseAdvice;
import org.tidewright.husbandry.estimate.Estimate;
import org.tidewright.plan.method.WaterQuantity;
import org.tidewright.plan.source.Basis;

/** Says what is known of a quantity and what to do: in a few words for a list, and as advice. */
final class QuantityWords {
    /** Share of a range by which the hour has to differ from the day to be spoken of; this project's own. */
    private static final double TOLD_OF_THE_HOUR = 0.08;

    /** Days after which a reading that was set aside is no news any more. */
    private static final double TOLD_BACK = 90;

    private static final DateTimeFormatter SHORT_DAY = DateTimeFormatter.ofPattern("EEE d MMM", Locale.ENGLISH);

    private final Situation seen;
    private final WaterQuantity quantity;
    private final Sources sources = new Sources();
    private final List<Sentence> remarks = new ArrayList<>();
    private final Set<String> cautions = new LinkedHashSet<>();
    private final String log;

    QuantityWords(Situation seen) {
        this.seen = seen;
        quantity = seen.quantity();
        log = sources.key(read(), Basis.YOUR_LOG, "each weighed by the error of its method");
    }

    private String read() {
        int own = seen.readings().size() - seen.probed().size();
        String readings = own + (own == 1 ? " reading of " : " readings of ") + quantity.words();
        if (seen.watch() == null) {
            return readings;
        }
        String hours = own == 0 ? seen.capital() + " by " : readings + ", and ";
        return hours + seen.watched() + " by four hours of each day";
    }

    // ── a few words for the list ──

    String state() {
        if (seen.lastIsOff()) {
            return seen.isWatched() ? "look at it now" : "test again";
        }
        if (seen.decision() instanceof DoseAdvice.Correct) {
            return "bring it back";
        } else if (seen.decision() instanceof DoseAdvice.Move) {
            return "move the dose";
        } else if (seen.settling() != null) {
            return "settling until " + SHORT_DAY.format(seen.settling().until().atZone(seen.zone()));
        }
        if (seen.isOverdue()) {
            return seen.isSilent() ? "its probe is silent" : "test today";
        }
        String steady = seen.isOutside() ? outside() : "steady; ";
        return steady
                + (seen.isWatched()
                        ? "read by its probe"
                        : "test by " + SHORT_DAY.format(seen.nextTest().atZone(seen.zone())));
    }

    private String outside() {
        return seen.held().holds(seen.next().value()) ? "outside its range, comes back; " : "outside its range; ";
    }

    QuantityStudy.Call call() {
        if (seen.lastIsOff() || seen.decision() instanceof DoseAdvice.Correct) {
            return QuantityStudy.Call.HANDS;
        } else if (seen.decision() instanceof DoseAdvice.Move || seen.isOutsideUndosed()) {
            return QuantityStudy.Call.DECIDE;
        } else if (seen.isOverdue()) {
            return QuantityStudy.Call.TEST;
        }
        return seen.settling() != null ? QuantityStudy.Call.LEAVE : QuantityStudy.Call.NONE;
    }

    String headline() {
        String words = quantity.words();
        return switch (call()) {
            case HANDS -> seen.lastIsOff() ? again() : "Bring " + words + " back into its range.";
            case DECIDE ->
                seen.decision() instanceof DoseAdvice.Move
                        ? "Move " + seen.doseWords() + "."
                        : seen.capital() + " is outside its range.";
            case TEST ->
                seen.isSilent()
                        ? "See to " + seen.watched() + ", or test " + words + " today."
                        : "Test " + words + " today.";
            case LEAVE ->
                "Leave " + seen.doseWords() + " alone until "
                        + seen.day(Objects.requireNonNull(seen.settling()).until()) + ".";
            case NONE -> "";
        };
    }

    private String again() {
        return seen.isWatched()
                ? "Look at the water and at " + seen.watched() + " now."
                : "Test " + quantity.words() + " again before you act.";
    }

    // ── advice ──

    Advice advice() {
        Sentence lead = seen.lastIsOff() ? testAgain() : decided(remarks);
        setAside();
        List<Advice.Told> figures = new ArrayList<>();
        figures.add(new Advice.Told(
                "Now, estimated", Told.level(quantity, seen.point().level()), log));
        hour(figures);
        if (seen.range() != null) {
            sources.key(
                    seen.capital() + " held between two values",
                    seen.range().basis(),
                    seen.range().detail());
        }
        return new Advice(lead, remarks, figures, List.of(), List.copyOf(cautions), sources.all());
    }

    /** What is dosed is held over the day; a test at one hour shows the level of that hour. */
    private void hour(List<Advice.Told> figures) {
        if (seen.range() != null
                && Math.abs(seen.point().level().value() - seen.level().value())
                        > TOLD_OF_THE_HOUR * (seen.range().most() - seen.range().least())) {
            figures.add(new Advice.Told("Over the whole day", Told.level(quantity, seen.level()), log));
            remarks.add(Sentence.of(
                    "At this hour " + quantity.words() + " stands at ",
                    Told.level(quantity, seen.point().level()),
                    ", over the whole day at ",
                    Told.level(quantity, seen.level()),
                    ": light and doses move it by the hour. It is the day that is held in its range."));
        }
    }

    private Sentence testAgain() {
        Estimate.Judged last = seen.last();
        if (seen.isWatched()) {
            return Sentence.of(
                    "Look at the water and at " + seen.watched() + " now: it last showed ",
                    Told.level(quantity, last.reading().value()),
                    ", " + errors(last.off())
                            + " errors off all before. Until more of its hours agree, that is set aside.");
        }
        remarks.add(decided(new ArrayList<>()));
        return Sentence.of(
                "Test " + quantity.words() + " again before you act: the reading of ",
                Told.level(quantity, last.reading().value()),
                " stands " + errors(last.off()) + " errors off all others. Until then it is set aside.");
    }

    /** What the level asks for, and what bears on it. */
    private Sentence decided(List<Sentence> bearing) {
        DoseWords dose = new DoseWords(seen, sources, log, bearing, cautions);
        if (seen.decision() instanceof DoseAdvice.Settle settle) {
            return dose.settle(settle.settling());
        } else if (seen.decision() instanceof DoseAdvice.Move move) {
            return dose.move(move);
        } else if (seen.decision() instanceof DoseAdvice.Correct correct) {
            return dose.correct(correct);
        } else if (seen.isOverdue() && !seen.isOutside()) {
            return due();
        } else if (seen.decision() instanceof DoseAdvice.Leave leave) {
            return dose.leave(leave);
        } else if (seen.isOutside() && !seen.isAbove() && seen.dry() != null) {
            return dose.byTheGram(seen.dry());
        }
        return new UndosedWords(seen, sources, log).sentence();
    }

    private Sentence due() {
        double last = seen.last().reading().time();
        long days = Math.max(1, Math.round(seen.point().time() - last));
        if (seen.isSilent()) {
            return Sentence.of(
                    "See to " + seen.watched() + ", or test " + quantity.words() + " today: it has said nothing for "
                            + days + (days == 1 ? " day" : " days") + ", and the estimate has widened to ",
                    figure(Told.level(quantity, seen.point().level()), log),
                    ".");
        }
        return Sentence.of(
                "Test " + quantity.words() + " today: the last test is " + days + (days == 1 ? " day" : " days")
                        + " old, and the estimate has widened to ",
                figure(Told.level(quantity, seen.level()), log),
                ".");
    }

    /** The reason for the headline, which the lead of the advice may hold already. */
    Sentence why(Advice advice) {
        return call() == QuantityStudy.Call.LEAVE
                ? DoseWords.moved(seen, Objects.requireNonNull(seen.settling()))
                : advice.lead().withoutSources();
    }

    private void setAside() {
        seen.readings().subList(0, seen.readings().size() - 1).stream()
                .filter(judged -> judged.standing() == Estimate.Standing.SET_ASIDE)
                .filter(judged -> judged.reading().time() > seen.point().time() - TOLD_BACK)
                .filter(judged -> !seen.probed().contains(judged))
                .reduce((before, after) -> after)
                .ifPresent(judged -> remarks.add(Sentence.of(
                        "A reading of ",
                        Told.level(quantity, judged.reading().value()),
                        " stands " + errors(judged.off()) + " errors off all others and was set aside.")));
    }

    private static String errors(double off) {
        return String.format(Locale.ROOT, "%.1f", Math.abs(off));
    }
}
