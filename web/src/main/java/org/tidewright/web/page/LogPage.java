package org.tidewright.web.page;

import java.time.LocalDate;
import java.time.OffsetDateTime;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.tidewright.husbandry.journal.Event;
import org.tidewright.husbandry.journal.Journal;
import org.tidewright.husbandry.journal.Kind;
import org.tidewright.husbandry.journal.Line;
import org.tidewright.husbandry.journal.Span;
import org.tidewright.husbandry.note.NoteWords;
import org.tidewright.plan.model.UnitSystem;
import org.tidewright.web.desk.Desk;
import org.tidewright.web.desk.SystemView;

/**
 * The log of a system: its next line, and the lines before, the newest first.
 *
 * @param echo what became of the line just sent; null where none was
 * @param days of the month shown
 * @param older address of the month before; null where there is nothing older
 */
public record LogPage(
        String href,
        String token,
        LogForm form,
        @Nullable String echo,
        String shown,
        List<Day> days,
        List<KindLink> kinds,
        @Nullable String newer,
        @Nullable String older) {

    /** The lines of one day. */
    public record Day(String title, List<Entry> lines) {}

    /** A line. */
    public record Entry(
            String time,
            String words,
            @Nullable String doubt,
            String remark,
            String href,
            @Nullable Picture photo) {}

    /** A choice of what is shown. */
    public record KindLink(String words, String href, boolean current) {}

    private static final DateTimeFormatter DAY = DateTimeFormatter.ofPattern("EEEE d MMMM yyyy", Locale.ENGLISH);
    private static final DateTimeFormatter MONTH = DateTimeFormatter.ofPattern("MMMM yyyy", Locale.ENGLISH);
    private static final DateTimeFormatter TIME = DateTimeFormatter.ofPattern("HH:mm", Locale.ENGLISH);

    /** What a reader asked to see: a month, and one kind of lines or all. */
    public record Choice(LocalDate month, @Nullable Kind kind) {}

    static LogPage of(
            Desk desk,
            SystemView view,
            String token,
            LogForm form,
            @Nullable UUID justKept,
            Choice choice,
            UnitSystem units) {
        ZoneId zone = desk.clock().getZone();
        String href = Reader.href(view.entry()) + "/log";
        Set<Kind> kinds = choice.kind() == null ? EnumSet.allOf(Kind.class) : EnumSet.of(choice.kind());
        List<Line> lines = desk.journal().lines(view.entry().id(), month(choice.month(), zone), kinds);
        boolean anyOlder = hasOlder(desk.journal(), view.entry().id(), choice.month(), zone, kinds);
        LocalDate thisMonth = LocalDate.now(desk.clock()).withDayOfMonth(1);
        return new LogPage(
                href,
                token,
                form,
                justKept == null ? null : echo(desk.journal(), view.entry().id(), justKept, units),
                MONTH.format(choice.month()),
                days(lines, href, units),
                kindLinks(href, choice),
                choice.month().isBefore(thisMonth)
                        ? monthHref(href, choice.month().plusMonths(1), choice.kind())
                        : null,
                anyOlder ? monthHref(href, choice.month().minusMonths(1), choice.kind()) : null);
    }

    private static Span month(LocalDate first, ZoneId zone) {
        return new Span(
                first.atStartOfDay(zone).toInstant(),
                first.plusMonths(1).atStartOfDay(zone).toInstant());
    }

    private static boolean hasOlder(Journal journal, String system, LocalDate month, ZoneId zone, Set<Kind> kinds) {
        return journal.lastBefore(system, month.atStartOfDay(zone).toInstant(), kinds)
                .isPresent();
    }

    private static List<Day> days(List<Line> lines, String href, UnitSystem units) {
        List<Day> days = new ArrayList<>();
        List<Entry> ofDay = new ArrayList<>();
        for (int i = lines.size() - 1; i >= 0; i--) {
            Line line = lines.get(i);
            ofDay.add(entry(line, href, units));
            LocalDate day = line.at().toLocalDate();
            if (i == 0 || !lines.get(i - 1).at().toLocalDate().equals(day)) {
                days.add(new Day(DAY.format(day), ofDay));
                ofDay = new ArrayList<>();
            }
        }
        return days;
    }

    private static Entry entry(Line line, String href, UnitSystem units) {
        return new Entry(
                TIME.format(line.at()),
                NoteWords.of(line.event(), units),
                ReadingDoubt.of(line.event()),
                line.remark(),
                href + "/" + line.id(),
                Picture.of(line, href));
    }

    /** What was kept, with the error of its method at once. */
    private static @Nullable String echo(Journal journal, String system, UUID kept, UnitSystem units) {
        List<Line> history = journal.history(system, kept);
        if (history.isEmpty()) {
            return null;
        }
        Line line = history.get(history.size() - 1);
        if (line.struck()) {
            return "Taken back: " + NoteWords.of(line.event(), units) + ". It stays in its history.";
        }
        String doubt = ReadingDoubt.of(line.event());
        String error = doubt != null
                ? " (" + doubt + ")"
                : line.event() instanceof Event.Reading ? ". Say by what you measured, and its error is told" : "";
        return "In the log: " + NoteWords.of(line.event(), units) + error + ", " + told(line.at()) + ".";
    }

    private static String told(OffsetDateTime at) {
        return DAY.format(at) + " at " + TIME.format(at);
    }

    private static List<KindLink> kindLinks(String href, Choice choice) {
        List<KindLink> links = new ArrayList<>();
        links.add(new KindLink("all", monthHref(href, choice.month(), null), choice.kind() == null));
        for (Kind kind : Kind.values()) {
            links.add(new KindLink(KindWords.of(kind), monthHref(href, choice.month(), kind), kind == choice.kind()));
        }
        return links;
    }

    private static String monthHref(String href, LocalDate month, @Nullable Kind kind) {
        return href + "?month=" + month.toString().substring(0, 7) + (kind == null ? "" : "&kind=" + kind.key());
    }

    /** Where photos are served, before their names. */
    public String photos() {
        return Picture.href(href, "");
    }
}
