package org.tidewright.web.page;

import java.time.Duration;
import java.time.Instant;
import java.time.ZonedDateTime;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.tidewright.husbandry.journal.Kind;
import org.tidewright.husbandry.journal.Line;
import org.tidewright.husbandry.journal.Span;
import org.tidewright.husbandry.note.NoteWords;
import org.tidewright.husbandry.quantity.QuantityCourse;
import org.tidewright.husbandry.quantity.QuantityStudy;
import org.tidewright.husbandry.quantity.QuantityStudy.Call;
import org.tidewright.husbandry.quantity.WaterStudy;
import org.tidewright.plan.method.WaterQuantity;
import org.tidewright.plan.model.UnitSystem;
import org.tidewright.web.desk.Desk;
import org.tidewright.web.desk.SystemView;

/**
 * What wants hands or a decision today, what is settling or being waited for and until when, the next reading in two taps,
 * the latest lines.
 *
 * @param echo what became of the reading just sent; null where none was
 */
public record TodayPage(
        String href,
        String token,
        String date,
        String lead,
        @Nullable String echo,
        List<Letter> letters,
        QuickEntry entry,
        List<Settles> settles,
        List<Counted> counted,
        List<LatestLine> latest) {

    private static final DateTimeFormatter DATE = DateTimeFormatter.ofPattern("EEEE, d MMMM", Locale.ENGLISH);
    private static final DateTimeFormatter SHORT = DateTimeFormatter.ofPattern("EEE d MMM", Locale.ENGLISH);
    private static final DateTimeFormatter LINE = DateTimeFormatter.ofPattern("EEE HH:mm", Locale.ENGLISH);
    private static final int LATEST = 6;
    private static final int LOOKED_BACK_DAYS = 21;

    /**
     * An entry of the letter: what to do, then why.
     *
     * @param moveHref where the move it advises is written down; null where it advises none
     * @param cautions what to mind while doing it
     */
    public record Letter(
            String kind,
            String act,
            Markup why,
            String href,
            String link,
            @Nullable String moveHref,
            List<String> cautions,
            boolean settling) {}

    /** Something that settles. */
    public record Settles(String what, String until, String elapsed, String told) {}

    /**
     * Days that are counted, of a watch or without fish.
     *
     * @param elapsed share of them that has passed, as a width
     * @param told day so many of so many
     */
    public record Counted(String what, String until, String elapsed, String told, String href) {}

    /** One of the latest lines. */
    public record LatestLine(String at, String words, String doubt, String href) {}

    static TodayPage of(
            Desk desk,
            SystemView view,
            String token,
            @Nullable WaterQuantity entering,
            @Nullable LogForm typed,
            @Nullable UUID justKept,
            Reader reader) {
        UnitSystem units = reader.units(view.entry());
        WaterStudy study = desk.water(view);
        ZonedDateTime now = ZonedDateTime.now(desk.clock());
        String href = Reader.href(view.entry());
        List<Letter> letters = new ArrayList<>(QuarantineNotes.letters(desk, view, units));
        letters.addAll(letters(study, href, units));
        return new TodayPage(
                href,
                token,
                DATE.format(now),
                lead(study, letters),
                justKept == null
                        ? null
                        : echo(desk, view, study, justKept, units).orElse(null),
                letters,
                QuickEntry.of(study, view.plan(), entering, typed, href, units),
                settles(study, now),
                QuarantineNotes.counted(desk, view),
                latest(desk, view, now, href, units));
    }

    private static List<Letter> letters(WaterStudy study, String href, UnitSystem units) {
        List<Letter> letters = new ArrayList<>();
        for (Call call : Call.values()) {
            for (QuantityStudy each : study.quantities()) {
                if (each.call() == call && call != Call.NONE) {
                    letters.add(new Letter(
                            kind(call),
                            each.headline(),
                            SentenceMarkup.of(each.why(), units),
                            href + "/water/" + each.quantity().key(),
                            call == Call.LEAVE
                                    ? "Why until then"
                                    : "See " + each.quantity().words(),
                            each.move() == null ? null : LogForm.address(href, each.move(), units),
                            each.advice().cautions(),
                            call == Call.LEAVE));
                }
            }
        }
        return letters;
    }

    private static String kind(Call call) {
        return switch (call) {
            case HANDS -> "Hands";
            case DECIDE -> "Decide";
            case TEST -> "Test";
            case LEAVE -> "Leave alone";
            case NONE -> "";
        };
    }

    private static String lead(WaterStudy study, List<Letter> letters) {
        if (study.quantities().isEmpty() && letters.isEmpty()) {
            return "Write a first reading: what is due, what to dose and what to leave alone follows from the log.";
        }
        long wanted = letters.stream().filter(letter -> !letter.settling()).count();
        long settling = letters.size() - wanted;
        String left = settling == 0
                ? ""
                : settling == 1
                        ? " One dose is to be left alone."
                        : " " + capital(number(settling)) + " doses are to be left alone.";
        if (wanted == 0) {
            return "Nothing presses today." + left;
        }
        return (wanted == 1 ? "One thing today." : capital(number(wanted)) + " things today.") + left;
    }

    private static String number(long count) {
        return switch ((int) Math.min(count, 10)) {
            case 2 -> "two";
            case 3 -> "three";
            case 4 -> "four";
            case 5 -> "five";
            case 6 -> "six";
            default -> Long.toString(count);
        };
    }

    private static String capital(String words) {
        return words.substring(0, 1).toUpperCase(Locale.ROOT) + words.substring(1);
    }

    /** What was kept, with its error, and whether it surprises. */
    private static Optional<String> echo(Desk desk, SystemView view, WaterStudy study, UUID kept, UnitSystem units) {
        for (QuantityStudy each : study.quantities()) {
            for (QuantityCourse.Dot dot : each.course().readings()) {
                if (dot.line().equals(kept)) {
                    return Optional.of("In the log. "
                            + QuantityChart.words(
                                    dot, each.quantity(), desk.clock().getZone(), units));
                }
            }
        }
        List<Line> history = desk.journal().history(view.entry().id(), kept);
        return history.isEmpty()
                ? Optional.empty()
                : Optional.of("In the log: "
                        + NoteWords.of(history.get(history.size() - 1).event(), units) + ".");
    }

    private static List<Settles> settles(WaterStudy study, ZonedDateTime now) {
        List<Settles> settles = new ArrayList<>();
        for (QuantityStudy each : study.quantities()) {
            if (each.settling() != null) {
                Instant moved = each.settling().moved();
                Instant until = each.settling().until();
                double whole = Duration.between(moved, until).toMillis();
                double share =
                        Math.min(1, Duration.between(moved, now.toInstant()).toMillis() / whole);
                long days = Duration.between(moved, until).toDays();
                long day = Duration.between(moved, now.toInstant()).toDays() + 1;
                settles.add(new Settles(
                        capital(each.quantity().words()) + ", "
                                + each.settling().lever(),
                        SHORT.format(until.atZone(now.getZone())),
                        Math.round(100 * share) + "%",
                        "day " + day + " of " + Math.max(day, days)));
            }
        }
        return settles;
    }

    private static List<LatestLine> latest(
            Desk desk, SystemView view, ZonedDateTime now, String href, UnitSystem units) {
        Span span = new Span(
                now.minusDays(LOOKED_BACK_DAYS).toInstant(), now.plusMinutes(1).toInstant());
        List<Line> lines = desk.journal().lines(view.entry().id(), span, EnumSet.allOf(Kind.class));
        List<LatestLine> latest = new ArrayList<>();
        for (int i = lines.size() - 1; i >= Math.max(0, lines.size() - LATEST); i--) {
            Line line = lines.get(i);
            String doubt = ReadingDoubt.of(line.event());
            latest.add(new LatestLine(
                    LINE.format(line.at()),
                    NoteWords.of(line.event(), units),
                    doubt == null ? "" : doubt,
                    href + "/log/" + line.id()));
        }
        return latest;
    }
}
