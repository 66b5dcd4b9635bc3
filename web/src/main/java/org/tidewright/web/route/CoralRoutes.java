package org.tidewright.web.route;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import java.util.EnumSet;
import java.util.List;
import org.tidewright.husbandry.journal.Kind;
import org.tidewright.husbandry.journal.Line;
import org.tidewright.husbandry.journal.Span;
import org.tidewright.web.desk.Desk;
import org.tidewright.web.desk.SystemView;
import org.tidewright.web.page.CoralsPage;
import org.tidewright.web.page.Pages;
import org.tidewright.web.page.Reader;

/** The page about corals. It keeps nothing: a place that is tried follows from its address. */
public final class CoralRoutes {
    private final Desk desk;
    private final Pages pages;
    private final Assets assets;

    public CoralRoutes(Desk desk, Pages pages, Assets assets) {
        this.desk = desk;
        this.pages = pages;
        this.assets = assets;
    }

    public void register(RoutesConfig routes) {
        routes.get("/systems/{id}/corals", this::show);
    }

    private void show(Context ctx) {
        SystemView view = SystemRoutes.system(desk, ctx);
        Reader reader = Readers.of(ctx, assets);
        List<Line> animals = desk.journal().lines(view.entry().id(), Span.EVER, EnumSet.of(Kind.ANIMAL));
        CoralsPage page = CoralsPage.of(
                ctx::queryParam,
                view,
                desk.water(view),
                animals,
                desk.species().catalogue(),
                reader.units(view.entry()));
        if (page.refused()) {
            ctx.status(HttpStatus.UNPROCESSABLE_CONTENT);
        }
        Answers.html(ctx, pages.corals(view, page, reader));
    }
}
