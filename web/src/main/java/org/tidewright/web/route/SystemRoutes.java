package org.tidewright.web.route;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import io.javalin.http.NotFoundResponse;
import org.jspecify.annotations.Nullable;
import org.tidewright.husbandry.nutrient.Handles;
import org.tidewright.plan.method.WaterQuantity;
import org.tidewright.plan.model.UnitSystem;
import org.tidewright.twin.rehearsal.OutageOrder;
import org.tidewright.web.desk.Desk;
import org.tidewright.web.desk.SystemView;
import org.tidewright.web.page.DayForm;
import org.tidewright.web.page.Levers;
import org.tidewright.web.page.NewTankForm;
import org.tidewright.web.page.NutrientForm;
import org.tidewright.web.page.Pages;
import org.tidewright.web.page.QuantityPage;
import org.tidewright.web.page.Reader;
import org.tidewright.web.page.WaterDeskPage;
import org.tidewright.web.page.WaterForm;

/** The pages that only show. */
public final class SystemRoutes {
    private final Desk desk;
    private final Pages pages;
    private final Assets assets;

    public SystemRoutes(Desk desk, Pages pages, Assets assets) {
        this.desk = desk;
        this.pages = pages;
        this.assets = assets;
    }

    public void register(RoutesConfig routes) {
        routes.get("/", ctx -> Answers.html(ctx, pages.home(Readers.of(ctx, assets))));
        routes.get("/water-desk", this::waterDesk);
        routes.get("/systems/{id}", this::toBuild);
        routes.get("/systems/{id}/water", ctx -> water(ctx, null));
        routes.get("/systems/{id}/water/{quantity}", ctx -> water(ctx, quantity(ctx)));
        routes.get("/systems/{id}/build", this::build);
        routes.get("/systems/{id}/rehearse", this::rehearse);
        routes.get("/systems/{id}/new-tank", this::newTank);
        routes.get("/systems/{id}/day", this::day);
        routes.get("/systems/{id}/feed-and-export", this::nutrients);
    }

    static SystemView system(Desk desk, Context ctx) {
        return desk.system(ctx.pathParam("id"))
                .orElseThrow(() -> new NotFoundResponse("No system goes by that address."));
    }

    private void waterDesk(Context ctx) {
        Reader reader = Readers.of(ctx, assets);
        UnitSystem units = reader.units(desk.systems());
        WaterDeskPage page = WaterDeskPage.of(WaterForm.read(ctx::queryParam, units), units);
        if (page.refused()) {
            ctx.status(HttpStatus.UNPROCESSABLE_CONTENT);
        }
        Answers.html(ctx, pages.waterDesk(page, reader));
    }

    private void toBuild(Context ctx) {
        ctx.redirect("/systems/" + system(desk, ctx).entry().id() + "/build", HttpStatus.SEE_OTHER);
    }

    private void water(Context ctx, @Nullable WaterQuantity asked) {
        SystemView view = system(desk, ctx);
        Reader reader = Readers.of(ctx, assets);
        QuantityPage page = pages.quantity(view, asked, ctx::queryParam, reader);
        if (page.refused()) {
            ctx.status(HttpStatus.UNPROCESSABLE_CONTENT);
        }
        Answers.html(ctx, pages.water(view, page, reader));
    }

    private static WaterQuantity quantity(Context ctx) {
        return WaterQuantity.ofKey(ctx.pathParam("quantity"))
                .orElseThrow(() -> new NotFoundResponse("No quantity goes by that address."));
    }

    private void build(Context ctx) {
        String show = ctx.queryParam("show");
        Answers.html(ctx, pages.build(system(desk, ctx), show == null ? "running" : show, Readers.of(ctx, assets)));
    }

    private void nutrients(Context ctx) {
        SystemView view = system(desk, ctx);
        Reader reader = Readers.of(ctx, assets);
        UnitSystem units = reader.units(view.entry());
        NutrientForm form = NutrientForm.read(ctx::queryParam, Handles.of(view.plan(), units), units);
        Answers.html(ctx, pages.nutrients(view, form, reader));
    }

    private void rehearse(Context ctx) {
        SystemView view = system(desk, ctx);
        Reader reader = Readers.of(ctx, assets);
        UnitSystem units = reader.units(view.entry());
        OutageOrder usual = desk.usualOrder(view.plan());
        Answers.html(ctx, pages.rehearse(view, Levers.read(ctx::queryParam, usual, view.plan(), units), reader));
    }

    private void newTank(Context ctx) {
        SystemView view = system(desk, ctx);
        Reader reader = Readers.of(ctx, assets);
        NewTankForm form = NewTankForm.read(ctx::queryParam, view.plan(), reader.units(view.entry()));
        Answers.html(ctx, pages.newTank(view, form, reader));
    }

    private void day(Context ctx) {
        SystemView view = system(desk, ctx);
        DayForm form = DayForm.read(ctx::queryParam, view.plan(), desk.usualDay(view.plan()));
        Answers.html(ctx, pages.day(view, form, Readers.of(ctx, assets)));
    }
}
