package org.tidewright.web.route;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import java.util.Optional;
import org.tidewright.web.desk.Desk;
import org.tidewright.web.desk.SystemView;
import org.tidewright.web.page.Boxes;
import org.tidewright.web.page.Pages;
import org.tidewright.web.page.Reader;
import org.tidewright.web.page.ShopPage;

/** At the shop: the page, and the list of all species it looks them up in. */
public final class ShopRoutes {
    private final Desk desk;
    private final Pages pages;
    private final Assets assets;

    public ShopRoutes(Desk desk, Pages pages, Assets assets) {
        this.desk = desk;
        this.pages = pages;
        this.assets = assets;
    }

    public void register(RoutesConfig routes) {
        routes.get("/systems/{id}/shop", this::shop);
        routes.get("/systems/{id}/shop.json", this::list);
    }

    private void shop(Context ctx) {
        SystemView view = SystemRoutes.system(desk, ctx);
        Optional<SystemView> display = Boxes.displayOf(desk, view);
        if (display.isPresent()) {
            // Nobody buys for a quarantine tank alone.
            ctx.redirect(Reader.href(display.get().entry()) + "/shop", HttpStatus.FOUND);
            return;
        }
        Reader reader = Readers.of(ctx, assets);
        ShopPage page = ShopPage.of(
                desk, view, ctx::queryParam, ctx.queryParams("seen"), assets.addresses(), reader.units(view.entry()));
        if (page.refused()) {
            ctx.status(HttpStatus.UNPROCESSABLE_CONTENT);
        }
        Answers.html(ctx, pages.shop(view, page, reader));
    }

    private void list(Context ctx) {
        SystemView view = SystemRoutes.system(desk, ctx);
        Reader reader = Readers.of(ctx, assets);
        ctx.contentType("application/json; charset=utf-8");
        ctx.result(ShopPage.json(desk, view, reader.units(view.entry())));
    }
}
