package org.tidewright.web;

import io.javalin.Javalin;
import org.eclipse.jetty.util.thread.QueuedThreadPool;
import org.tidewright.web.desk.Desk;
import org.tidewright.web.page.Pages;
import org.tidewright.web.route.ArrivalRoutes;
import org.tidewright.web.route.Assets;
import org.tidewright.web.route.CoralRoutes;
import org.tidewright.web.route.FormBody;
import org.tidewright.web.route.FormToken;
import org.tidewright.web.route.ImportRoutes;
import org.tidewright.web.route.LifeRoutes;
import org.tidewright.web.route.LogRoutes;
import org.tidewright.web.route.MixingRoutes;
import org.tidewright.web.route.PhotoRoutes;
import org.tidewright.web.route.PlanRoutes;
import org.tidewright.web.route.Problems;
import org.tidewright.web.route.QuarantineRoutes;
import org.tidewright.web.route.RequestGuard;
import org.tidewright.web.route.ShopRoutes;
import org.tidewright.web.route.SolutionRoutes;
import org.tidewright.web.route.SystemRoutes;

/** The running server of the pages. */
public final class WebServer implements AutoCloseable {
    private final Javalin javalin;

    private WebServer(Javalin javalin) {
        this.javalin = javalin;
    }

    /** Starts to serve a desk; returns once requests are answered. */
    public static WebServer start(Desk desk, WebSettings settings) {
        Assets assets = Assets.load();
        Pages pages = new Pages(desk);
        Problems problems = new Problems(pages, assets);
        FormToken token = new FormToken();
        RequestGuard guard = new RequestGuard(settings.hosts());
        SystemRoutes systems = new SystemRoutes(desk, pages, assets);
        SolutionRoutes solutions = new SolutionRoutes(desk, pages, assets);
        LifeRoutes life = new LifeRoutes(desk, pages, assets);
        ShopRoutes shop = new ShopRoutes(desk, pages, assets);
        PlanRoutes plans = new PlanRoutes(desk, pages, assets, token);
        LogRoutes log = new LogRoutes(desk, pages, assets, token);
        MixingRoutes mixing = new MixingRoutes(desk, pages, assets);
        ImportRoutes imports = new ImportRoutes(desk, pages, assets, token);
        PhotoRoutes photos = new PhotoRoutes(desk);
        CoralRoutes corals = new CoralRoutes(desk, pages, assets);
        QuarantineRoutes quarantine = new QuarantineRoutes(desk, pages, assets, token);
        ArrivalRoutes arrivals = new ArrivalRoutes(desk, pages, assets, token);
        Javalin javalin = Javalin.create(config -> {
            config.startup.showJavalinBanner = false;
            config.startup.showOldJavalinVersionWarning = false;
            config.jetty.host = settings.address();
            config.jetty.threadPool = new QueuedThreadPool(40, 4);
            config.jetty.modifyServer(server -> server.setErrorHandler(problems.outsideOfRoutes()));
            config.concurrency.useVirtualThreads = false;
            config.http.maxRequestSize = FormBody.LARGEST;
            config.routes.before(guard::check);
            assets.register(config.routes);
            systems.register(config.routes);
            solutions.register(config.routes);
            life.register(config.routes);
            shop.register(config.routes);
            plans.register(config.routes);
            imports.register(config.routes);
            log.register(config.routes);
            mixing.register(config.routes);
            photos.register(config.routes);
            corals.register(config.routes);
            quarantine.register(config.routes);
            arrivals.register(config.routes);
            problems.register(config.routes);
        });
        javalin.start(settings.port());
        return new WebServer(javalin);
    }

    /** The port it listens on. */
    public int port() {
        return javalin.port();
    }

    @Override
    public void close() {
        javalin.stop();
    }
}
