package org.tidewright.web.route;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import java.time.LocalDate;
import java.time.YearMonth;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import org.tidewright.husbandry.calendar.ArrivalCalendar;
import org.tidewright.husbandry.wishlist.ArrivalAnswer;
import org.tidewright.husbandry.wishlist.WishFile;
import org.tidewright.husbandry.wishlist.WishLine;
import org.tidewright.husbandry.wishlist.WishList;
import org.tidewright.web.desk.Desk;
import org.tidewright.web.desk.SystemView;
import org.tidewright.web.page.ArrivalsForm;
import org.tidewright.web.page.ArrivalsPage;
import org.tidewright.web.page.Households;
import org.tidewright.web.page.Pages;
import org.tidewright.web.page.WishFiles;

/** The wish list of a system, and the days on which its animals come. */
public final class ArrivalRoutes {
    private static final Logger LOG = LoggerFactory.getLogger(ArrivalRoutes.class);
    private static final String STALE = "This page was opened before the program was last started, so nothing was kept."
            + " It still stands here: send it once more.";
    private static final String OVERTAKEN =
            "Not kept: the list was changed elsewhere since this page was opened. Yours still stands here; sent once more it"
                    + " replaces the other.";
    private static final String UNKEPT =
            "Not kept: the program could not write it; its log says why. It still stands here: send it again once there is"
                    + " room.";
    private static final String FAULTY = "Not kept: the file of this list has faults. Mend it first.";

    private final Desk desk;
    private final Pages pages;
    private final Assets assets;
    private final FormToken token;

    public ArrivalRoutes(Desk desk, Pages pages, Assets assets, FormToken token) {
        this.desk = desk;
        this.pages = pages;
        this.assets = assets;
        this.token = token;
    }

    public void register(RoutesConfig routes) {
        routes.get("/systems/{id}/arrivals", this::show);
        routes.get("/systems/{id}/arrivals.ics", this::calendar);
        routes.post("/systems/{id}/arrivals", this::keepList);
        routes.post("/systems/{id}/arrivals/keep", this::keepDays);
    }

    private void show(Context ctx) {
        String kept = ctx.queryParam("kept");
        String echo = "list".equals(kept) ? "The list is kept." : "days".equals(kept) ? "These days are kept." : null;
        page(ctx, SystemRoutes.system(desk, ctx), null, echo);
    }

    private void page(Context ctx, SystemView view, @Nullable ArrivalsForm typed, @Nullable String echo) {
        Answers.html(ctx, pages.arrivals(view, token.of(ctx), typed, echo, Readers.of(ctx, assets)));
    }

    private void calendar(Context ctx) {
        SystemView view = SystemRoutes.system(desk, ctx);
        ArrivalAnswer answer = ArrivalAnswer.of(WishFiles.of(desk, view).list(), Households.of(desk, view));
        ctx.contentType("text/calendar; charset=utf-8");
        ctx.header(
                "Content-Disposition", "attachment; filename=\"" + view.entry().id() + "-arrivals.ics\"");
        ctx.result(ArrivalCalendar.text(view.entry().id(), answer, desk.clock().instant()));
    }

    private void keepList(Context ctx) {
        SystemView view = SystemRoutes.system(desk, ctx);
        FormBody body = FormBody.read(ctx);
        ArrivalsForm form = ArrivalsForm.read(body::field);
        WishFiles file = WishFiles.of(desk, view);
        if (refused(ctx, view, body, form, file)) {
            return;
        }
        try {
            WishList typed = form.wishes(desk.species().catalogue());
            write(ctx, view, form, file, merged(view, file, typed), "list");
        } catch (ArrivalsForm.Refused faulty) {
            ctx.status(HttpStatus.UNPROCESSABLE_CONTENT);
            page(ctx, view, faulty.form(), null);
        }
    }

    /** Wishes that came in this month stay in the file, for their money is of it; older ones that are done fall away. */
    private WishList merged(SystemView view, WishFiles file, WishList typed) {
        ArrivalAnswer answer = ArrivalAnswer.of(file.list(), Households.of(desk, view));
        WishList open = ArrivalsPage.open(file.list(), answer);
        YearMonth month = YearMonth.from(LocalDate.now(desk.clock()));
        List<WishLine> lines = new ArrayList<>();
        for (WishLine line : file.list().lines()) {
            WishLine.Kept kept = line.kept();
            if (!open.lines().contains(line)
                    && kept != null
                    && !YearMonth.from(kept.comes()).isBefore(month)) {
                lines.add(line);
            }
        }
        lines.addAll(typed.keepingDaysOf(open).lines());
        return new WishList(lines, typed.budget(), typed.nothingBefore());
    }

    private void keepDays(Context ctx) {
        SystemView view = SystemRoutes.system(desk, ctx);
        FormBody body = FormBody.read(ctx);
        WishFiles file = WishFiles.of(desk, view);
        if (refused(ctx, view, body, null, file)) {
            return;
        }
        ArrivalAnswer answer = ArrivalAnswer.of(file.list(), Households.of(desk, view));
        write(ctx, view, null, file, file.list().keeping(answer.study().days()), "days");
    }

    /** Whether nothing is to be kept: an old token, a faulty file, or a file that was changed since. */
    private boolean refused(Context ctx, SystemView view, FormBody body, @Nullable ArrivalsForm form, WishFiles file) {
        String why = null;
        if (!token.isGood(body.field("token"), ctx)) {
            ctx.status(HttpStatus.FORBIDDEN);
            why = STALE;
        } else if (!file.faults().isEmpty()) {
            ctx.status(HttpStatus.CONFLICT);
            why = FAULTY;
        } else if (!file.mark().equals(body.field("based_on"))) {
            ctx.status(HttpStatus.CONFLICT);
            why = OVERTAKEN;
        }
        if (why == null) {
            return false;
        }
        if (form == null) {
            page(ctx, view, null, why);
        } else {
            page(ctx, view, form.refused(why).basedOn(file.mark()), null);
        }
        return true;
    }

    private void write(
            Context ctx, SystemView view, @Nullable ArrivalsForm form, WishFiles file, WishList list, String what) {
        try {
            if (desk.keepWishes(view.entry().id(), file.text(), WishFile.write(list))) {
                ctx.redirect("/systems/" + view.entry().id() + "/arrivals?kept=" + what, HttpStatus.SEE_OTHER);
                return;
            }
            ctx.status(HttpStatus.CONFLICT);
            page(ctx, view, form == null ? null : form.refused(OVERTAKEN), form == null ? OVERTAKEN : null);
        } catch (RuntimeException unwritable) {
            LOG.error("The wish list of {} could not be kept", view.entry().id(), unwritable);
            ctx.status(HttpStatus.INTERNAL_SERVER_ERROR);
            page(ctx, view, form == null ? null : form.refused(UNKEPT), form == null ? UNKEPT : null);
        }
    }
}
