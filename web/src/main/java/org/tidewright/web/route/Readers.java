package org.tidewright.web.route;

import io.javalin.http.Context;
import io.javalin.http.Cookie;
import io.javalin.http.SameSite;
import java.util.Arrays;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.tidewright.plan.model.UnitSystem;
import org.tidewright.web.page.Reader;

/** Finds out who reads: the units asked for in the address, else those of an earlier choice. */
final class Readers {
    private static final String COOKIE = "tidewright_units";
    private static final int YEAR = 365 * 86400;

    private Readers() {}

    static Reader of(Context ctx, Assets assets) {
        UnitSystem asked = units(ctx.queryParam("units"));
        if (asked != null) {
            Cookie cookie = new Cookie(COOKIE, asked == UnitSystem.US ? "us" : "metric");
            cookie.setPath("/");
            cookie.setMaxAge(YEAR);
            cookie.setHttpOnly(true);
            cookie.setSameSite(SameSite.STRICT);
            ctx.cookie(cookie);
        }
        String query = ctx.queryString();
        String rest = query == null
                ? ""
                : Arrays.stream(query.split("&"))
                        .filter(pair -> !pair.isEmpty() && !pair.startsWith("units=") && !pair.startsWith("saved="))
                        .collect(Collectors.joining("&"));
        return new Reader(asked != null ? asked : units(ctx.cookie(COOKIE)), ctx.path(), rest, assets.path());
    }

    private static @Nullable UnitSystem units(@Nullable String word) {
        if (word == null) {
            return null;
        }
        return switch (word) {
            case "us" -> UnitSystem.US;
            case "metric" -> UnitSystem.METRIC;
            default -> null;
        };
    }
}
