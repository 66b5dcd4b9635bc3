package org.tidewright.app;

import io.javalin.Javalin;
import java.io.PrintStream;
import java.util.logging.Level;
import java.util.logging.Logger;

/** Stands in for the program until its commands are here: says its name and serves one page. */
public final class Main {
    private static final String PAGE = """
            <!doctype html>
            <html lang="en">
            <head><meta charset="utf-8"><meta name="viewport" content="width=device-width, initial-scale=1">
            <title>Tidewright</title><link rel="icon" href="/icon.svg" type="image/svg+xml"></head>
            <body><main><h1>Tidewright</h1><p>The pages are not here yet.</p></main></body>
            </html>
            """;

    private static final String ICON = """
            <svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 16 16"><path d="M0 8q4-6 8 0t8 0v8H0z"/></svg>
            """;

    private Main() {}

    public static void main(String[] arguments) {
        PrintStream out = System.out;
        switch (arguments.length == 0 ? "" : arguments[0]) {
            case "--version" -> out.println("Tidewright 0.1.0-SNAPSHOT");
            case "demo" -> out.println("Tidewright is at http://127.0.0.1:" + serve() + "/");
            default -> {
                System.err.println("Tidewright knows: demo, --version");
                System.exit(2);
            }
        }
    }

    private static int serve() {
        Logger.getLogger("").setLevel(Level.WARNING);
        return Javalin.create(settings -> {
                    settings.startup.showJavalinBanner = false;
                    settings.jetty.host = "127.0.0.1";
                    settings.concurrency.useVirtualThreads = false;
                    settings.bundledPlugins.enableGlobalHeaders(
                            headers -> headers.contentSecurityPolicy("default-src 'self'; frame-ancestors 'none'"));
                    settings.routes.get("/", context -> context.html(PAGE));
                    settings.routes.get(
                            "/icon.svg",
                            context -> context.contentType("image/svg+xml").result(ICON));
                })
                .start(0)
                .port();
    }
}
