package org.tidewright.web.page;

import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;
import org.tidewright.husbandry.journal.Line;
import org.tidewright.husbandry.note.NoteWords;
import org.tidewright.plan.model.UnitSystem;
import org.tidewright.web.desk.SystemView;

/**
 * One line of the log with all its revisions, to be corrected or taken back.
 *
 * @param basedOn the revision the form began from
 * @param lead what to do here, or what came of it
 */
public record LogLinePage(
        String href,
        String logHref,
        String token,
        LogForm form,
        int basedOn,
        String lead,
        List<Revision> revisions,
        boolean struck) {

    /** A revision, the newest first. */
    public record Revision(
            int number,
            String writtenAt,
            String words,
            String at,
            String remark,
            boolean struck,
            @Nullable Picture photo) {}

    private static final DateTimeFormatter AT = DateTimeFormatter.ofPattern("d MMM yyyy HH:mm", Locale.ENGLISH);

    static LogLinePage of(
            SystemView view,
            List<Line> history,
            String token,
            @Nullable LogForm typed,
            String lead,
            ZoneId zone,
            UnitSystem units) {
        Line stands = history.get(history.size() - 1);
        String logHref = Reader.href(view.entry()) + "/log";
        List<Revision> revisions = new ArrayList<>();
        for (int i = history.size() - 1; i >= 0; i--) {
            Line line = history.get(i);
            revisions.add(new Revision(
                    line.revision(),
                    AT.format(line.writtenAt().atZone(zone)),
                    NoteWords.of(line.event(), units),
                    AT.format(line.at()),
                    line.remark(),
                    line.struck(),
                    Picture.of(line, logHref)));
        }
        return new LogLinePage(
                logHref + "/" + stands.id(),
                logHref,
                token,
                typed == null ? LogForm.of(stands, units) : typed,
                stands.revision(),
                lead,
                revisions,
                stands.struck());
    }

    static String usualLead(boolean struck) {
        return struck
                ? "This line was taken back. Correct it, and it stands again."
                : "Correct the line, or take it back: what stood before stays below.";
    }

    /** Where photos are served, before their names. */
    public String photos() {
        return Picture.href(logHref, "");
    }
}
