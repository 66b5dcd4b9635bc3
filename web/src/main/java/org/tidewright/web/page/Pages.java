package org.tidewright.web.page;

import gg.jte.ContentType;
import gg.jte.TemplateEngine;
import gg.jte.output.StringOutput;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.tidewright.husbandry.journal.Line;
import org.tidewright.husbandry.note.NoteWords;
import org.tidewright.plan.fault.Fault;
import org.tidewright.plan.method.WaterQuantity;
import org.tidewright.plan.model.UnitSystem;
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

    /** Where nitrogen and phosphorus come from and go. */
    public String nutrients(SystemView view, NutrientForm form, Reader reader) {
        Chrome chrome = reader.around(
                "Feed and export: " + view.entry().name(), "feed-and-export", 12, desk.systems(), view.entry());
        return html("feed-and-export", chrome, NutrientPage.of(desk, view, form, reader.units(view.entry())));
    }

    /** The mixing desk. */
    public String mixing(SystemView view, MixingPage page, Reader reader) {
        String title = "Mixing: " + view.entry().name();
        return html("mixing", reader.around(title, "mixing", 20, desk.systems(), view.entry()), page);
    }

    /**
     * What wants hands or a decision today.
     *
     * @param entering the quantity whose reading is entered next; null for the one that is due
     * @param typed what was typed and refused; null for none
     */
    public String today(
            SystemView view,
            String token,
            @Nullable WaterQuantity entering,
            @Nullable LogForm typed,
            @Nullable UUID justKept,
            Reader reader) {
        Chrome chrome = reader.around("Today: " + view.entry().name(), "today", 24, desk.systems(), view.entry());
        return html("today", chrome, TodayPage.of(desk, view, token, entering, typed, justKept, reader));
    }

    /** The water by one quantity. */
    public String water(SystemView view, QuantityPage page, Reader reader) {
        Chrome chrome = reader.around("Water: " + view.entry().name(), "water", 14, desk.systems(), view.entry());
        return html("water", chrome, page);
    }

    /**
     * What the water's page shows.
     *
     * @param asked null for the one that usually matters most
     * @param query which days its chart shows
     */
    public QuantityPage quantity(SystemView view, @Nullable WaterQuantity asked, Levers.Query query, Reader reader) {
        return QuantityPage.of(desk, view, asked, query, reader.units(view.entry()));
    }

    /** Dosing solutions from pure salts. */
    public String solutions(SystemView view, SolutionsPage page, Reader reader) {
        String title = "Solutions: " + view.entry().name();
        return html("solutions", reader.around(title, "solutions", 20, desk.systems(), view.entry()), page);
    }

    /** Who lives here, and who may come. */
    public String life(SystemView view, LifePage page, Reader reader) {
        String title = "Life: " + view.entry().name();
        return html("life", reader.around(title, "life", 20, desk.systems(), view.entry()), page);
    }

    /** At the shop. */
    public String shop(SystemView view, ShopPage page, Reader reader) {
        String title = "At the shop: " + view.entry().name();
        return html("shop", reader.around(title, "shop", 12, desk.systems(), view.entry()), page);
    }

    /**
     * Whom a keeper wishes for, and when each comes.
     *
     * @param typed what was typed and refused; null for the list that is kept
     * @param echo what became of what was just sent; null for nothing
     */
    public String arrivals(
            SystemView view, String token, @Nullable ArrivalsForm typed, @Nullable String echo, Reader reader) {
        String title = "Arrivals: " + view.entry().name();
        Chrome chrome = reader.around(title, "arrivals", 30, desk.systems(), view.entry());
        return html("arrivals", chrome, ArrivalsPage.of(desk, view, token, typed, echo, reader.units(view.entry())));
    }

    /** What holds the pH where it is. */
    public String ph(SystemView view, PhPage page, Reader reader) {
        String title = "pH: " + view.entry().name();
        return html("ph", reader.around(title, "ph", 20, desk.systems(), view.entry()), page);
    }

    /** Where corals stand, and what they will take. */
    public String corals(SystemView view, CoralsPage page, Reader reader) {
        String title = "Corals: " + view.entry().name();
        return html("corals", reader.around(title, "corals", 30, desk.systems(), view.entry()), page);
    }

    /** The log, with its next line as it was typed, and what became of the last. */
    public String log(
            SystemView view,
            String token,
            LogForm form,
            @Nullable UUID justKept,
            LogPage.Choice choice,
            Reader reader) {
        Chrome chrome = reader.around("Log: " + view.entry().name(), "log", 31, desk.systems(), view.entry());
        UnitSystem units = reader.units(view.entry());
        return html("log", chrome, LogPage.of(desk, view, token, form, justKept, choice, units));
    }

    /**
     * A quarantine tank.
     *
     * @param look what was typed and refused; null for none
     * @param move likewise
     */
    public String quarantine(
            SystemView view,
            String token,
            @Nullable LookForm look,
            @Nullable MoveForm move,
            @Nullable UUID justKept,
            Reader reader) {
        String title = "Quarantine: " + view.entry().name();
        Chrome chrome = reader.around(title, "quarantine", 30, desk.systems(), view.entry());
        UnitSystem units = reader.units(view.entry());
        String echo = echo(view, justKept, units);
        return html("quarantine", chrome, QuarantinePage.of(desk, view, token, look, move, echo, units));
    }

    /** A display's quarantine: how long it stands without fish, and the tanks that serve it. */
    public String fallow(
            SystemView view, String token, @Nullable FallowForm typed, @Nullable UUID justKept, Reader reader) {
        String title = "Quarantine: " + view.entry().name();
        Chrome chrome = reader.around(title, "quarantine", 30, desk.systems(), view.entry());
        UnitSystem units = reader.units(view.entry());
        return html("fallow", chrome, FallowPage.of(desk, view, token, typed, echo(view, justKept, units), units));
    }

    /** The line just kept, in words; null for none. */
    private @Nullable String echo(SystemView view, @Nullable UUID justKept, UnitSystem units) {
        List<Line> history = justKept == null
                ? List.of()
                : desk.journal().history(view.entry().id(), justKept);
        return history.isEmpty()
                ? null
                : "In the log: " + NoteWords.of(history.get(history.size() - 1).event(), units) + ".";
    }

    /**
     * One line of the log.
     *
     * @param typed what stands in the form; null for the line as it stands
     * @param lead what came of the last try; null for none
     */
    public String logLine(
            SystemView view,
            List<Line> history,
            String token,
            @Nullable LogForm typed,
            @Nullable String lead,
            Reader reader) {
        Chrome chrome =
                reader.around("A line of the log: " + view.entry().name(), "log", 31, desk.systems(), view.entry());
        String told = lead != null
                ? lead
                : LogLinePage.usualLead(history.get(history.size() - 1).struck());
        return html(
                "log-line",
                chrome,
                LogLinePage.of(view, history, token, typed, told, desk.clock().getZone(), reader.units(view.entry())));
    }

    /**
     * A spreadsheet to be taken in.
     *
     * @param step what stands on the page
     */
    public String imported(SystemView view, ImportPage step, Reader reader) {
        String title = "Take in a spreadsheet: " + view.entry().name();
        return html("log-import", reader.around(title, "log", 31, desk.systems(), view.entry()), step);
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
