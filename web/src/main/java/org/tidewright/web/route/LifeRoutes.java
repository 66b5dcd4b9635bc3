package org.tidewright.web.route;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import java.util.Optional;
import org.tidewright.web.desk.Desk;
import org.tidewright.web.desk.SystemView;
import org.tidewright.web.page.Boxes;
import org.tidewright.web.page.LifePage;
import org.tidewright.web.page.Pages;
import org.tidewright.web.page.Reader;

/** Who lives in a system, and whether somebody else may come. */
public final class LifeRoutes {
    /** Seconds after which a browser asks again for what the twin had not worked out yet. */
    private static final String LOOK_AGAIN = "3";

    private final Desk desk;
    private final Pages pages;
    private final Assets assets;

    public LifeRoutes(Desk desk, Pages pages, Assets assets) {
        this.desk = desk;
        this.pages = pages;
        this.assets = assets;
    }

    public void register(RoutesConfig routes) {
        routes.get("/systems/{id}/life", this::life);
    }

    private void life(Context ctx) {
        SystemView view = SystemRoutes.system(desk, ctx);
        Optional<SystemView> display = Boxes.displayOf(desk, view);
        if (display.isPresent() && ctx.queryParam("consider") != null) {
            // Whoever asks for a quarantine tank means the display behind it.
            ctx.redirect(Reader.href(display.get().entry()) + "/life?" + ctx.queryString(), HttpStatus.FOUND);
            return;
        }
        Reader reader = Readers.of(ctx, assets);
        LifePage page = LifePage.of(desk, view, ctx.queryParam("consider"), reader.units(view.entry()));
        if (page.refused()) {
            ctx.status(HttpStatus.UNPROCESSABLE_CONTENT);
        }
        if (page.late()) {
            ctx.header("Refresh", LOOK_AGAIN);
        }
        Answers.html(ctx, pages.life(view, page, reader));
    }
}
