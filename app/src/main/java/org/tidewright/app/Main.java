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
            <title>Tidewright</title></head>
            <body><main><h1>Tidewright</h1><p>The pages are not here yet.</p></main></body>
            </html>
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
                })
                .start(0)
                .port();
    }
}
