package org.tidewright.web.route;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import io.javalin.http.NotFoundResponse;
import java.time.DateTimeException;
import java.time.LocalDate;
import java.time.OffsetDateTime;
import java.time.YearMonth;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import org.tidewright.husbandry.journal.Draft;
import org.tidewright.husbandry.journal.Kind;
import org.tidewright.husbandry.journal.Line;
import org.tidewright.husbandry.quantity.EarlyMove;
import org.tidewright.plan.method.WaterQuantity;
import org.tidewright.web.desk.Desk;
import org.tidewright.web.desk.SystemView;
import org.tidewright.web.page.LogForm;
import org.tidewright.web.page.LogPage;
import org.tidewright.web.page.Pages;

/** The log: its lines, a new one, corrections. */
public final class LogRoutes {
    private static final Logger LOG = LoggerFactory.getLogger(LogRoutes.class);
    private static final String STALE = "This page was opened before the program was last started, so the line was not"
            + " taken. It still stands here: send it once more.";
    private static final String PHOTO_AGAIN = " Choose the photo once more.";
    private static final String UNKEPT = "Not kept: the program could not write the line; its log says why. It still"
            + " stands here: send it again once there is room.";
    private static final String OVERTAKEN = "Somebody corrected this line meanwhile; nothing was kept. Compare with the"
            + " newest revision below, then send it again.";

    private final Desk desk;
    private final Pages pages;
    private final Assets assets;
    private final FormToken token;

    public LogRoutes(Desk desk, Pages pages, Assets assets, FormToken token) {
        this.desk = desk;
        this.pages = pages;
        this.assets = assets;
        this.token = token;
    }

    public void register(RoutesConfig routes) {
        routes.get("/systems/{id}/today", this::today);
        routes.post("/systems/{id}/today", ctx -> write(ctx, this::todayAgain, "today"));
        routes.get("/systems/{id}/log", this::show);
        routes.post("/systems/{id}/log", ctx -> write(ctx, this::logAgain, "log"));
        routes.get("/systems/{id}/log/{line}", this::showLine);
        routes.post("/systems/{id}/log/{line}", this::correct);
        routes.post("/systems/{id}/log/{line}/strike", this::strike);
    }

    private void show(Context ctx) {
        String line = ctx.queryParam("line");
        LogForm form = line == null ? LogForm.empty() : LogForm.proposed(line);
        page(ctx, SystemRoutes.system(desk, ctx), form, uuid(ctx.queryParam("kept")));
    }

    private void today(Context ctx) {
        SystemView view = SystemRoutes.system(desk, ctx);
        String asked = ctx.queryParam("enter");
        WaterQuantity entering =
                asked == null ? null : WaterQuantity.ofKey(asked).orElse(null);
        todayPage(ctx, view, entering, null);
    }

    private void todayAgain(Context ctx, SystemView view, LogForm typed) {
        String words = typed.text().split(" ", 2)[0];
        todayPage(ctx, view, WaterQuantity.ofKey(words).orElse(null), typed);
    }

    private void todayPage(Context ctx, SystemView view, @Nullable WaterQuantity entering, @Nullable LogForm typed) {
        UUID kept = typed == null ? uuid(ctx.queryParam("kept")) : null;
        Answers.html(ctx, pages.today(view, token.of(ctx), entering, typed, kept, Readers.of(ctx, assets)));
    }

    private void logAgain(Context ctx, SystemView view, LogForm typed) {
        page(ctx, view, typed, null);
    }

    /** Shows the page a line was written on once more, with what was typed and what is wrong with it. */
    @FunctionalInterface
    private interface Again {
        void show(Context ctx, SystemView view, LogForm typed);
    }

    private void write(Context ctx, Again again, String page) {
        SystemView view = SystemRoutes.system(desk, ctx);
        FormBody body = FormBody.read(ctx, PhotoRoutes.LARGEST_BODY, PhotoRoutes.TOO_LARGE);
        LogForm form = LogForm.read(body::field);
        if (!token.isGood(body.field("token"), ctx)) {
            ctx.status(HttpStatus.FORBIDDEN);
            again.show(ctx, view, form.refused(body.file("photo_file") == null ? STALE : STALE + PHOTO_AGAIN));
            return;
        }
        try {
            form = PhotoRoutes.attached(desk, view, body, form);
            Draft draft = form.draft(
                    view.plan(),
                    desk.levers(view.plan()),
                    OffsetDateTime.now(desk.clock()),
                    desk.clock().getZone(),
                    null);
            Optional<String> early = body.field("all_the_same") == null ? tooEarly(view, draft) : Optional.empty();
            if (early.isPresent()) {
                ctx.status(HttpStatus.CONFLICT);
                again.show(ctx, view, form.asked(early.get()));
                return;
            }
            Line kept = desk.journal().write(view.entry().id(), draft);
            ctx.redirect("/systems/" + view.entry().id() + "/" + page + "?kept=" + kept.id(), HttpStatus.SEE_OTHER);
        } catch (LogForm.Refused refused) {
            ctx.status(HttpStatus.UNPROCESSABLE_CONTENT);
            again.show(ctx, view, refused.form());
        } catch (RuntimeException unwritable) {
            LOG.error("A line of {} could not be kept", view.entry().id(), unwritable);
            ctx.status(HttpStatus.INTERNAL_SERVER_ERROR);
            again.show(ctx, view, form.refused(UNKEPT));
        }
    }

    /** Why a lever should not be moved yet; never of a line that is in the log already and is only sent once more. */
    private Optional<String> tooEarly(SystemView view, Draft draft) {
        return desk.journal().history(view.entry().id(), draft.id()).isEmpty()
                ? EarlyMove.reason(desk.water(view), draft.event(), desk.clock().getZone())
                : Optional.empty();
    }

    private void page(Context ctx, SystemView view, LogForm form, @Nullable UUID justKept) {
        Answers.html(ctx, pages.log(view, token.of(ctx), form, justKept, choice(ctx), Readers.of(ctx, assets)));
    }

    private LogPage.Choice choice(Context ctx) {
        LocalDate month = LocalDate.now(desk.clock()).withDayOfMonth(1);
        String asked = ctx.queryParam("month");
        if (asked != null) {
            try {
                month = YearMonth.parse(asked).atDay(1);
            } catch (DateTimeException noMonth) {
                throw new NotFoundResponse("No month goes by that address.");
            }
        }
        String kind = ctx.queryParam("kind");
        return new LogPage.Choice(month, kind == null ? null : Kind.ofKey(kind).orElse(null));
    }

    private void showLine(Context ctx) {
        SystemView view = SystemRoutes.system(desk, ctx);
        line(ctx, view, history(ctx, view), null, null);
    }

    private void correct(Context ctx) {
        SystemView view = SystemRoutes.system(desk, ctx);
        List<Line> history = history(ctx, view);
        FormBody body = FormBody.read(ctx, PhotoRoutes.LARGEST_BODY, PhotoRoutes.TOO_LARGE);
        Line stands = history.get(history.size() - 1);
        LogForm typed = LogForm.read(body::field, stands);
        if (!token.isGood(body.field("token"), ctx)) {
            ctx.status(HttpStatus.FORBIDDEN);
            line(ctx, view, history, typed, body.file("photo_file") == null ? STALE : STALE + PHOTO_AGAIN);
            return;
        }
        try {
            typed = PhotoRoutes.attached(desk, view, body, typed);
            Draft draft = typed.draft(
                    view.plan(),
                    desk.levers(view.plan()),
                    OffsetDateTime.now(desk.clock()),
                    desk.clock().getZone(),
                    stands);
            Optional<Line> kept = desk.journal().correct(view.entry().id(), body.number("based_on"), draft);
            answer(ctx, view, kept, typed);
        } catch (LogForm.Refused refused) {
            ctx.status(HttpStatus.UNPROCESSABLE_CONTENT);
            line(ctx, view, history, refused.form(), null);
        }
    }

    private void strike(Context ctx) {
        SystemView view = SystemRoutes.system(desk, ctx);
        List<Line> history = history(ctx, view);
        FormBody body = FormBody.read(ctx);
        if (!token.isGood(body.field("token"), ctx)) {
            ctx.status(HttpStatus.FORBIDDEN);
            line(ctx, view, history, null, STALE);
            return;
        }
        UUID id = history.get(0).id();
        answer(ctx, view, desk.journal().strike(view.entry().id(), id, body.number("based_on")), null);
    }

    private void answer(Context ctx, SystemView view, Optional<Line> kept, @Nullable LogForm typed) {
        if (kept.isPresent()) {
            ctx.redirect(
                    "/systems/" + view.entry().id() + "/log?kept=" + kept.get().id(), HttpStatus.SEE_OTHER);
            return;
        }
        ctx.status(HttpStatus.CONFLICT);
        line(ctx, view, history(ctx, view), typed, OVERTAKEN);
    }

    private void line(
            Context ctx, SystemView view, List<Line> history, @Nullable LogForm typed, @Nullable String lead) {
        Answers.html(ctx, pages.logLine(view, history, token.of(ctx), typed, lead, Readers.of(ctx, assets)));
    }

    private List<Line> history(Context ctx, SystemView view) {
        UUID id = uuid(ctx.pathParam("line"));
        List<Line> history =
                id == null ? List.of() : desk.journal().history(view.entry().id(), id);
        if (history.isEmpty()) {
            throw new NotFoundResponse("No line of the log goes by that address.");
        }
        return history;
    }

    private static @Nullable UUID uuid(@Nullable String text) {
        try {
            return text == null ? null : UUID.fromString(text);
        } catch (IllegalArgumentException none) {
            return null;
        }
    }
}
