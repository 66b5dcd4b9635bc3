package org.tidewright.web.route;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.NotFoundResponse;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/**
 * The style sheets, scripts and pictures of this build. Their address holds a hash over all of them, so a browser may keep
 * them for good and never mixes two builds.
 */
public final class Assets {
    /** Works for pages of systems, though it lies elsewhere. */
    private static final String WORKER = "shop-worker.js";

    private static final List<String> NAMES = List.of(
            "tokens.css",
            "components.css",
            "drawing.css",
            "pages.css",
            "page.js",
            "drawing.js",
            "build.js",
            "corals.js",
            "shop.js",
            "shop-list.js",
            "shop-keep.js",
            WORKER,
            "rehearse.js",
            "editor.js",
            "asking.js",
            "following.js",
            "mixing.js",
            "today.js",
            "water.js",
            "water-desk.js",
            "import.js",
            "feed-and-export.js",
            "mark.svg");

    /** Scripts of other people, as their jars hold them; the pages' scripts import them by these names. */
    private static final Map<String, String> LIBRARIES = Map.of(
            "internmap.js", "internmap/1.0.1/dist/internmap.min.js",
            "d3-array.js", "d3-array/2.12.1/dist/d3-array.min.js",
            "d3-sankey.js", "d3-sankey/0.12.3/dist/d3-sankey.min.js");

    private final Map<String, byte[]> files;
    private final String hash;

    private Assets(Map<String, byte[]> files, String hash) {
        this.files = files;
        this.hash = hash;
    }

    /** Reads them from the class path. */
    public static Assets load() {
        Map<String, byte[]> files = new LinkedHashMap<>();
        MessageDigest digest = sha256();
        NAMES.forEach(name -> files.put(name, read("/org/tidewright/web/asset/" + name)));
        new TreeMap<>(LIBRARIES)
                .forEach((name, place) -> files.put(name, read("/META-INF/resources/webjars/" + place)));
        files.values().forEach(digest::update);
        return new Assets(files, HexFormat.of().formatHex(digest.digest(), 0, 8));
    }

    private static byte[] read(String resource) {
        try (InputStream in = Assets.class.getResourceAsStream(resource)) {
            if (in == null) {
                throw new IllegalStateException("the file " + resource + " is missing from this build");
            }
            return in.readAllBytes();
        } catch (IOException unreadable) {
            throw new UncheckedIOException(unreadable);
        }
    }

    private static MessageDigest sha256() {
        try {
            return MessageDigest.getInstance("SHA-256");
        } catch (NoSuchAlgorithmException missing) {
            throw new IllegalStateException("every Java has SHA-256", missing);
        }
    }

    /** Address they stand under. */
    public String path() {
        return "/assets/" + hash + "/";
    }

    /** Addresses of all of them. */
    public List<String> addresses() {
        return files.keySet().stream().map(name -> path() + name).toList();
    }

    public void register(RoutesConfig routes) {
        routes.get("/assets/{hash}/{name}", this::serve);
    }

    private void serve(Context ctx) {
        String name = ctx.pathParam("name");
        byte[] file = files.get(name);
        if (file == null) {
            throw new NotFoundResponse();
        }
        ctx.contentType(type(name));
        // An older build's address still gets the file, but is not to be kept.
        boolean current = ctx.pathParam("hash").equals(hash);
        ctx.header("Cache-Control", current ? "public, max-age=31536000, immutable" : "no-store");
        if (name.equals(WORKER)) {
            ctx.header("Service-Worker-Allowed", "/systems/");
        }
        ctx.result(file);
    }

    private static String type(String name) {
        if (name.endsWith(".css")) {
            return "text/css; charset=utf-8";
        }
        return name.endsWith(".js") ? "text/javascript; charset=utf-8" : "image/svg+xml";
    }
}
