package org.tidewright.web.page;

import gg.jte.ContentType;
import gg.jte.TemplateEngine;
import gg.jte.output.StringOutput;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.tidewright.plan.fault.Fault;
import org.tidewright.web.desk.Desk;
import org.tidewright.web.desk.SystemEntry;
import org.tidewright.web.desk.SystemView;

/** Every page as HTML. */
public final class Pages {
    private final Desk desk;
    private final TemplateEngine templates =
            TemplateEngine.createPrecompiled(null, ContentType.Html, null, "org.tidewright.web.template");

    public Pages(Desk desk) {
        this.desk = desk;
    }

    public String home(Reader reader) {
        List<SystemEntry> all = desk.systems();
        return html("home", reader.around("Your systems", "home", all), HomePage.of(desk, all, reader));
    }

    /** The water desk, which belongs to no system. */
    public String waterDesk(WaterDeskPage page, Reader reader) {
        return html("water-desk", reader.around("Water desk", "water-desk", desk.systems()), page);
    }

    /**
     * The build page.
     *
     * @param show which water to draw: running, cut or blocked
     */
    public String build(SystemView view, String show, Reader reader) {
        Chrome chrome = reader.around("Build: " + view.entry().name(), "build", 30, desk.systems(), view.entry());
        return html("build", chrome, BuildPage.of(desk, view, show, reader));
    }

    public String rehearse(SystemView view, Levers levers, Reader reader) {
        Chrome chrome = reader.around(
                "Rehearse a power cut: " + view.entry().name(), "rehearse", 24, desk.systems(), view.entry());
        return html("rehearse", chrome, RehearsePage.of(desk, view, levers, reader));
    }

    public String newTank(SystemView view, NewTankForm form, Reader reader) {
        String title = "New tank: " + view.entry().name();
        Chrome chrome = reader.around(title, "new-tank", 30, desk.systems(), view.entry());
        return html("new-tank", chrome, NewTankPage.of(desk, view, form, reader));
    }

    public String day(SystemView view, DayForm form, Reader reader) {
        String title = "The day: " + view.entry().name();
        Chrome chrome = reader.around(title, "day", 24, desk.systems(), view.entry());
        return html("day", chrome, DayPage.of(desk, view, form, reader));
    }

    /**
     * The editor with the plan as it is kept.
     *
     * @param justSaved the revision saved a moment ago, if any
     */
    public String plan(SystemView view, String token, @Nullable Integer justSaved, Reader reader) {
        return editor(view, PlanPage.kept(view, token, justSaved), reader);
    }

    /** The editor with what was typed and its faults. */
    public String planFaulty(
            SystemView view, String token, int basedOn, String typed, List<Fault> faults, Reader reader) {
        return editor(view, PlanPage.faulty(view, token, basedOn, typed, faults), reader);
    }

    /** The editor with what was typed beside what somebody else saved. */
    public String planConflict(
            SystemView view, String token, int basedOn, String typed, int revision, String theirs, Reader reader) {
        PlanPage.Conflict conflict = new PlanPage.Conflict(revision, theirs);
        return editor(view, PlanPage.conflicting(view, token, basedOn, typed, conflict), reader);
    }

    /** The editor with what was typed, after its token had grown old. */
    public String planStale(SystemView view, String token, int basedOn, String typed, Reader reader) {
        return editor(view, PlanPage.stale(view, token, basedOn, typed), reader);
    }

    /** The editor with what was typed, after it could not be written down. */
    public String planUnkept(SystemView view, String token, int basedOn, String typed, Reader reader) {
        return editor(view, PlanPage.unkept(view, token, basedOn, typed), reader);
    }

    private String editor(SystemView view, PlanPage page, Reader reader) {
        String title = "Plan: " + view.entry().name();
        return html("plan", reader.around(title, "plan", 40, desk.systems(), view.entry()), page);
    }

    /** A problem page; it asks the desk for nothing, so it can be shown whatever broke. */
    public String problem(ProblemPage page, Reader reader) {
        return html("problem", reader.around(page.title(), "problem", List.of()), page);
    }

    private String html(String template, Chrome chrome, Object page) {
        StringOutput output = new StringOutput(60_000);
        templates.render(template + ".jte", Map.of("chrome", chrome, "page", page), output);
        return output.toString();
    }
}
