package org.tidewright.web.route;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.HttpResponseException;
import java.util.concurrent.atomic.AtomicLong;
import org.eclipse.jetty.http.HttpHeader;
import org.eclipse.jetty.io.Content;
import org.eclipse.jetty.server.Request;
import org.jspecify.annotations.Nullable;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import org.tidewright.web.page.Pages;
import org.tidewright.web.page.ProblemPage;

/** What the reader is told when something goes wrong: never how the program looks inside. */
public final class Problems {
    private static final Logger LOG = LoggerFactory.getLogger(Problems.class);

    private final Pages pages;
    private final Assets assets;
    private final AtomicLong count = new AtomicLong();

    public Problems(Pages pages, Assets assets) {
        this.pages = pages;
        this.assets = assets;
    }

    public void register(RoutesConfig routes) {
        routes.exception(HttpResponseException.class, (refused, ctx) -> {
            ctx.status(refused.getStatus());
            show(ctx, page(refused.getStatus(), refused.getMessage()));
        });
        routes.exception(Exception.class, (broken, ctx) -> {
            long number = count.incrementAndGet();
            LOG.error("Problem {} at {} {}", number, ctx.method(), ctx.path(), broken);
            ctx.status(500);
            show(
                    ctx,
                    new ProblemPage(
                            "Problem " + number + " since the program was started",
                            "This page did not come out",
                            "Try once more. If it stays so, the program's log tells under problem " + number
                                    + " what went wrong. Nothing you had saved is lost.",
                            "/",
                            "To the systems"));
        });
    }

    private void show(Context ctx, ProblemPage page) {
        Answers.html(ctx, pages.problem(page, Readers.of(ctx, assets)));
    }

    private static ProblemPage page(int status, @Nullable String reason) {
        String said = reason == null || reason.isBlank() ? "" : reason;
        return switch (status) {
            case 404 ->
                new ProblemPage(
                        "Not found",
                        "Nothing stands at this address",
                        said.startsWith("No system")
                                ? "No system goes by that address: it may have been given another name."
                                : "Choose a system and go on from there.",
                        "/",
                        "To the systems");
            case 403 ->
                new ProblemPage(
                        "Refused",
                        "This form was not taken",
                        said + " Open the page from here and try again; nothing was changed.",
                        "/",
                        "To the systems");
            case 413 ->
                new ProblemPage(
                        "Too large",
                        "This is more than can be taken",
                        said + " Nothing was changed.",
                        "/",
                        "To the systems");
            case 421 ->
                new ProblemPage(
                        "Refused",
                        "This server does not go by that name",
                        "Call it localhost, or add the name to the program's settings.",
                        "/",
                        "To the systems");
            default -> new ProblemPage("Refused", "This request was not taken", said, "/", "To the systems");
        };
    }

    /** What is answered where no route is reached at all: a request that is none. */
    public Request.Handler outsideOfRoutes() {
        return (request, response, callback) -> {
            response.getHeaders().put(HttpHeader.CONTENT_TYPE, "text/plain;charset=utf-8");
            response.getHeaders().put("X-Content-Type-Options", "nosniff");
            response.getHeaders().put("Content-Security-Policy", "default-src 'none'; frame-ancestors 'none'");
            Content.Sink.write(response, true, "This request was not taken.\n", callback);
            return true;
        };
    }
}
