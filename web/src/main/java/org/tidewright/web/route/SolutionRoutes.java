package org.tidewright.web.route;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import org.tidewright.web.desk.Desk;
import org.tidewright.web.desk.SystemView;
import org.tidewright.web.page.Pages;
import org.tidewright.web.page.PhPage;
import org.tidewright.web.page.Reader;
import org.tidewright.web.page.SolutionsPage;

/** The pages about what is dosed and what holds the pH: they answer what is asked and keep nothing. */
public final class SolutionRoutes {
    private final Desk desk;
    private final Pages pages;
    private final Assets assets;

    public SolutionRoutes(Desk desk, Pages pages, Assets assets) {
        this.desk = desk;
        this.pages = pages;
        this.assets = assets;
    }

    public void register(RoutesConfig routes) {
        routes.get("/systems/{id}/solutions", this::solutions);
        routes.get("/systems/{id}/ph", this::ph);
    }

    private void solutions(Context ctx) {
        SystemView view = SystemRoutes.system(desk, ctx);
        Reader reader = Readers.of(ctx, assets);
        SolutionsPage page = SolutionsPage.of(ctx::queryParam, view, desk.water(view), reader.units(view.entry()));
        if (page.refused()) {
            ctx.status(HttpStatus.UNPROCESSABLE_CONTENT);
        }
        Answers.html(ctx, pages.solutions(view, page, reader));
    }

    private void ph(Context ctx) {
        SystemView view = SystemRoutes.system(desk, ctx);
        Reader reader = Readers.of(ctx, assets);
        PhPage page =
                PhPage.of(ctx::queryParam, view, desk.water(view), desk.clock().getZone(), reader.units(view.entry()));
        if (page.refused()) {
            ctx.status(HttpStatus.UNPROCESSABLE_CONTENT);
        }
        Answers.html(ctx, pages.ph(view, page, reader));
    }
}
