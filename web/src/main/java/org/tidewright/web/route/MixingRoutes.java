package org.tidewright.web.route;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import io.javalin.http.NotFoundResponse;
import org.tidewright.husbandry.mixing.KnownSystem;
import org.tidewright.web.desk.Desk;
import org.tidewright.web.desk.SystemView;
import org.tidewright.web.page.MixingPage;
import org.tidewright.web.page.MixingTask;
import org.tidewright.web.page.Pages;
import org.tidewright.web.page.Reader;

/** The mixing desk of a system. It keeps nothing: every answer follows from its address. */
public final class MixingRoutes {
    private final Desk desk;
    private final Pages pages;
    private final Assets assets;

    public MixingRoutes(Desk desk, Pages pages, Assets assets) {
        this.desk = desk;
        this.pages = pages;
        this.assets = assets;
    }

    public void register(RoutesConfig routes) {
        routes.get("/systems/{id}/mixing", this::show);
    }

    private void show(Context ctx) {
        SystemView view = SystemRoutes.system(desk, ctx);
        String asked = ctx.queryParam("task");
        MixingTask task = asked == null
                ? MixingTask.CHANGE
                : MixingTask.ofKey(asked)
                        .orElseThrow(
                                () -> new NotFoundResponse("No question of the mixing desk goes by that address."));
        Reader reader = Readers.of(ctx, assets);
        KnownSystem known = KnownSystem.of(
                view.plan(),
                desk.water(view),
                view.entry().water(),
                desk.clock().getZone());
        MixingPage page = MixingPage.of(
                "/systems/" + view.entry().id(), task, ctx::queryParam, known, reader.units(view.entry()));
        if (page.refused()) {
            ctx.status(HttpStatus.UNPROCESSABLE_CONTENT);
        }
        Answers.html(ctx, pages.mixing(view, page, reader));
    }
}
