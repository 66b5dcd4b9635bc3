package org.tidewright.web.route;

import io.javalin.http.Context;

/** Answers with a page. */
final class Answers {
    private Answers() {}

    static void html(Context ctx, String html) {
        ctx.contentType("text/html; charset=utf-8");
        ctx.result(html);
    }
}
