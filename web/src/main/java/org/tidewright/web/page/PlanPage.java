package org.tidewright.web.page;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.tidewright.plan.fault.Fault;
import org.tidewright.web.desk.SystemView;

/**
 * The plan as text, to be changed.
 *
 * @param text what stands in the editor: after a fault or a conflict what was typed, not what is kept
 * @param basedOn the revision the text began from
 */
public record PlanPage(
        String href,
        String name,
        String note,
        String title,
        String lead,
        int basedOn,
        String token,
        String text,
        List<Fault> faults,
        List<Line> lines,
        int rows,
        String status,
        String saveWords,
        @Nullable Conflict conflict) {

    /** A line number, with what is wrong on the line. */
    public record Line(int number, @Nullable String fault) {}

    /** What somebody else saved meanwhile. */
    public record Conflict(int revision, String text) {}

    /** The plan as it is kept. */
    static PlanPage kept(SystemView view, String token, @Nullable Integer justSaved) {
        int revision = view.entry().revision();
        String lead = justSaved != null && justSaved == revision
                ? "Kept as revision " + revision + ". Every page reads it from now on."
                : "The plan is one text file, and it is yours. Change it here; nothing is kept before it reads without"
                        + " fault.";
        return page(view, token, revision, view.text(), List.of(), lead, null);
    }

    /** What was typed, with its faults. */
    static PlanPage faulty(SystemView view, String token, int basedOn, String typed, List<Fault> faults) {
        String lead = faults.size() == 1
                ? "Mend one line, then save again: nothing is kept yet, and nothing you typed is lost."
                : "Mend " + faults.size()
                        + " places, then save again: nothing is kept yet, and nothing you typed is lost.";
        return page(view, token, basedOn, typed, faults, lead, null);
    }

    /** What was typed, and what somebody else saved meanwhile. */
    static PlanPage conflicting(SystemView view, String token, int basedOn, String typed, Conflict conflict) {
        String lead = "Compare before you save: revision " + conflict.revision()
                + " was kept while you wrote from revision " + basedOn + ". Your text still stands here.";
        return page(view, token, conflict.revision(), typed, List.of(), lead, conflict);
    }

    /** What was typed on a page from before the program was started again. */
    static PlanPage stale(SystemView view, String token, int basedOn, String typed) {
        String lead =
                "Save once more: this page was opened before the program was last started, so the first try was not"
                        + " taken. Your text still stands here.";
        return page(view, token, basedOn, typed, List.of(), lead, null);
    }

    /** What was typed, after it could not be written down. */
    static PlanPage unkept(SystemView view, String token, int basedOn, String typed) {
        String lead = "Not kept: the program could not write the new revision; its log says why. Your text still stands"
                + " here, so save again once there is room, or take a copy of it.";
        return page(view, token, basedOn, typed, List.of(), lead, null);
    }

    private static PlanPage page(
            SystemView view,
            String token,
            int basedOn,
            String text,
            List<Fault> faults,
            String lead,
            @Nullable Conflict conflict) {
        int count = (int) text.lines().count() + (text.endsWith("\n") || text.isEmpty() ? 1 : 0);
        List<Line> lines = new ArrayList<>();
        for (int i = 1; i <= count; i++) {
            int number = i;
            String fault = faults.stream()
                    .filter(f -> f.line() == number)
                    .map(PlanPage::beside)
                    .findFirst()
                    .orElse(null);
            lines.add(new Line(i, fault));
        }
        return new PlanPage(
                Reader.href(view.entry()),
                view.entry().name(),
                "Plan revision " + view.entry().revision(),
                "The plan of " + view.entry().name(),
                lead,
                basedOn,
                token,
                // The reader of HTML drops one line break at the start of a text area.
                "\n" + text,
                faults,
                lines,
                count,
                faults.isEmpty() ? "Based on revision " + basedOn : faults.size() + " to mend",
                "Save as revision " + ((conflict == null ? basedOn : conflict.revision()) + 1),
                conflict);
    }

    private static String beside(Fault fault) {
        return "found " + fault.found() + "; expected " + fault.expected();
    }
}
