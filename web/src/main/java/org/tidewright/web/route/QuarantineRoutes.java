package org.tidewright.web.route;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import io.javalin.http.NotFoundResponse;
import java.time.OffsetDateTime;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import org.tidewright.husbandry.journal.Draft;
import org.tidewright.husbandry.quarantine.FallowState;
import org.tidewright.husbandry.quarantine.QuarantineStudy;
import org.tidewright.husbandry.quarantine.Watch;
import org.tidewright.web.desk.Desk;
import org.tidewright.web.desk.SystemView;
import org.tidewright.web.page.Boxes;
import org.tidewright.web.page.FallowForm;
import org.tidewright.web.page.LogForm;
import org.tidewright.web.page.LookForm;
import org.tidewright.web.page.MoveForm;
import org.tidewright.web.page.Pages;

/** Quarantine: the look of the day, animals on their way to the display, and displays without fish. */
public final class QuarantineRoutes {
    private static final Logger LOG = LoggerFactory.getLogger(QuarantineRoutes.class);
    private static final String STALE =
            "This page was opened before the program was last started, so nothing was taken."
                    + " It still stands here: send it once more.";
    private static final String UNKEPT =
            "Not kept: the program could not write it; its log says why. It still stands here: send it again once there is"
                    + " room.";

    private final Desk desk;
    private final Pages pages;
    private final Assets assets;
    private final FormToken token;

    public QuarantineRoutes(Desk desk, Pages pages, Assets assets, FormToken token) {
        this.desk = desk;
        this.pages = pages;
        this.assets = assets;
        this.token = token;
    }

    public void register(RoutesConfig routes) {
        routes.get("/systems/{id}/quarantine", this::show);
        routes.post("/systems/{id}/quarantine/look", this::look);
        routes.post("/systems/{id}/quarantine/move", this::move);
        routes.post("/systems/{id}/quarantine/fallow", this::fallow);
    }

    private void show(Context ctx) {
        SystemView view = SystemRoutes.system(desk, ctx);
        if (view.plan().quarantine() == null) {
            display(ctx, view, null);
        } else {
            tank(ctx, view, null, null);
        }
    }

    private void tank(Context ctx, SystemView view, @Nullable LookForm look, @Nullable MoveForm move) {
        UUID kept = look == null && move == null ? kept(ctx) : null;
        Answers.html(ctx, pages.quarantine(view, token.of(ctx), look, move, kept, Readers.of(ctx, assets)));
    }

    private void display(Context ctx, SystemView view, @Nullable FallowForm typed) {
        UUID kept = typed == null ? kept(ctx) : null;
        Answers.html(ctx, pages.fallow(view, token.of(ctx), typed, kept, Readers.of(ctx, assets)));
    }

    private static @Nullable UUID kept(Context ctx) {
        try {
            String kept = ctx.queryParam("kept");
            return kept == null ? null : UUID.fromString(kept);
        } catch (IllegalArgumentException none) {
            return null;
        }
    }

    private SystemView tank(Context ctx) {
        SystemView view = SystemRoutes.system(desk, ctx);
        if (view.plan().quarantine() == null) {
            throw new NotFoundResponse("This system is no quarantine tank.");
        }
        return view;
    }

    private void look(Context ctx) {
        SystemView view = tank(ctx);
        FormBody body = FormBody.read(ctx);
        LookForm form = LookForm.read(body::field);
        if (!token.isGood(body.field("token"), ctx)) {
            ctx.status(HttpStatus.FORBIDDEN);
            tank(ctx, view, form.refused(STALE), null);
            return;
        }
        try {
            Draft draft = form.draft(Boxes.study(desk, view).batch(), now());
            desk.journal().write(view.entry().id(), draft);
            done(ctx, view, draft);
        } catch (LookForm.Refused refused) {
            ctx.status(HttpStatus.UNPROCESSABLE_CONTENT);
            tank(ctx, view, refused.form(), null);
        } catch (RuntimeException unwritable) {
            failed(ctx, view, unwritable);
            tank(ctx, view, form.refused(UNKEPT), null);
        }
    }

    private void move(Context ctx) {
        SystemView view = tank(ctx);
        FormBody body = FormBody.read(ctx);
        MoveForm form = MoveForm.read(body::field);
        if (!token.isGood(body.field("token"), ctx)) {
            ctx.status(HttpStatus.FORBIDDEN);
            tank(ctx, view, null, form.refused(STALE));
            return;
        }
        QuarantineStudy study = Boxes.study(desk, view);
        Optional<SystemView> display = Boxes.served(desk, study.quarantine());
        if (display.isEmpty()) {
            ctx.status(HttpStatus.UNPROCESSABLE_CONTENT);
            tank(
                    ctx,
                    view,
                    null,
                    form.refused("No system called “" + study.quarantine().serves()
                            + "” is in this folder: mend quarantine.serves in the plan."));
            return;
        }
        try {
            Map<String, List<Draft>> drafts = form.drafts(
                    study.batch(), view.entry().id(), display.get().entry().id(), now());
            Optional<String> early =
                    body.field("all_the_same") == null ? tooEarly(study, display.get()) : Optional.empty();
            if (early.isPresent()) {
                ctx.status(HttpStatus.CONFLICT);
                tank(ctx, view, null, form.asked(early.get()));
                return;
            }
            desk.journal().writeTogether(drafts);
            done(ctx, view, drafts.values().iterator().next().get(0));
        } catch (MoveForm.Refused refused) {
            ctx.status(HttpStatus.UNPROCESSABLE_CONTENT);
            tank(ctx, view, null, refused.form());
        } catch (RuntimeException unwritable) {
            failed(ctx, view, unwritable);
            tank(ctx, view, null, form.refused(UNKEPT));
        }
    }

    /** Why animals should not move yet; empty where they may. */
    private Optional<String> tooEarly(QuarantineStudy study, SystemView display) {
        Watch watch = study.watch();
        if (watch != null && !watch.isOver(study.today())) {
            return Optional.of("This is day " + watch.dayOf(study.today()) + " of "
                    + watch.governing().days()
                    + ": what they may carry would go along, and a display cannot be treated.");
        }
        List<FallowState> fallows = Boxes.fallows(desk, display).stream()
                .filter(fallow -> !fallow.isOver(study.today()))
                .toList();
        return fallows.isEmpty()
                ? Optional.empty()
                : Optional.of(display.entry().name() + " stands without fish because of "
                        + fallows.get(0).parasite().words() + ": a fish now would keep the parasite alive.");
    }

    private void fallow(Context ctx) {
        SystemView view = SystemRoutes.system(desk, ctx);
        FormBody body = FormBody.read(ctx);
        FallowForm form = FallowForm.read(body::field);
        if (!token.isGood(body.field("token"), ctx)) {
            ctx.status(HttpStatus.FORBIDDEN);
            display(ctx, view, form.refused(STALE));
            return;
        }
        try {
            Draft draft = form.draft(
                    view.plan(), desk.levers(view.plan()), now(), desk.clock().getZone());
            desk.journal().write(view.entry().id(), draft);
            done(ctx, view, draft);
        } catch (LogForm.Refused refused) {
            ctx.status(HttpStatus.UNPROCESSABLE_CONTENT);
            display(ctx, view, form.refused(refused.form().fault()));
        } catch (RuntimeException unwritable) {
            failed(ctx, view, unwritable);
            display(ctx, view, form.refused(UNKEPT));
        }
    }

    private OffsetDateTime now() {
        return OffsetDateTime.now(desk.clock());
    }

    private static void done(Context ctx, SystemView view, Draft draft) {
        ctx.redirect("/systems/" + view.entry().id() + "/quarantine?kept=" + draft.id(), HttpStatus.SEE_OTHER);
    }

    private static void failed(Context ctx, SystemView view, RuntimeException unwritable) {
        LOG.error("A line of {} could not be kept", view.entry().id(), unwritable);
        ctx.status(HttpStatus.INTERNAL_SERVER_ERROR);
    }
}
