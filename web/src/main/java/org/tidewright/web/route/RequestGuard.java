package org.tidewright.web.route;

import io.javalin.http.Context;
import io.javalin.http.ForbiddenResponse;
import io.javalin.http.HandlerType;
import io.javalin.http.HttpResponseException;
import java.net.URI;
import java.net.URISyntaxException;
import java.util.HashSet;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * What every request must pass before anything is answered: a known name in its Host header (a foreign page that has
 * pointed its own name at this machine sends another), and for forms an origin that is this server. Sets the headers of
 * every answer.
 */
public final class RequestGuard {
    private static final Map<String, String> HEADERS = Map.of(
            "Content-Security-Policy",
            "default-src 'none'; script-src 'self'; worker-src 'self'; style-src 'self'; img-src 'self' data:;"
                    + " connect-src 'self'; form-action 'self'; frame-ancestors 'none'; base-uri 'none'",
            "X-Content-Type-Options",
            "nosniff",
            // Not no-referrer: with that a browser tells the origin of its own forms as "null".
            "Referrer-Policy",
            "same-origin",
            "Cross-Origin-Opener-Policy",
            "same-origin",
            "Cross-Origin-Resource-Policy",
            "same-origin",
            "Cache-Control",
            "no-store");

    private final Set<String> hosts;

    /**
     * A guard.
     *
     * @param hosts names this server goes by, besides localhost
     */
    public RequestGuard(Set<String> hosts) {
        this.hosts = new HashSet<>(Set.of("localhost", "127.0.0.1", "[::1]"));
        hosts.forEach(host -> this.hosts.add(host.toLowerCase(Locale.ROOT)));
    }

    /** Sets the headers, then refuses what may not pass. */
    public void check(Context ctx) {
        HEADERS.forEach(ctx::header);
        if (!hosts.contains(name(ctx.header("Host")))) {
            throw new HttpResponseException(421, "This server does not go by that name.");
        }
        if (ctx.method().equals(HandlerType.GET) || ctx.method().equals(HandlerType.HEAD)) {
            return;
        }
        String site = ctx.header("Sec-Fetch-Site");
        if (site != null && !site.equals("same-origin") && !site.equals("none")) {
            throw new ForbiddenResponse("The form came from another site.");
        }
        String origin = ctx.header("Origin");
        if (origin != null && !isHere(origin, ctx)) {
            throw new ForbiddenResponse("The form came from another site.");
        }
    }

    /** The name in a Host header, without its port. */
    private static String name(@Nullable String host) {
        if (host == null) {
            return "";
        }
        String lower = host.toLowerCase(Locale.ROOT);
        int port = lower.lastIndexOf(':');
        return port > lower.lastIndexOf(']') ? lower.substring(0, port) : lower;
    }

    private static boolean isHere(String origin, Context ctx) {
        try {
            String authority = new URI(origin).getRawAuthority();
            return authority != null && authority.equalsIgnoreCase(ctx.header("Host"));
        } catch (URISyntaxException opaque) {
            return false;
        }
    }
}
