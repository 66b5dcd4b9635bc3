package org.tidewright.web.route;

import io.javalin.http.BadRequestResponse;
import io.javalin.http.ContentTooLargeResponse;
import io.javalin.http.Context;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.net.URLDecoder;
import java.nio.charset.StandardCharsets;
import java.util.HashMap;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/** The fields of a sent form, read up to a bound whether or not the browser said how long it is. */
public final class FormBody {
    /** Largest body taken, bytes: a plan of the largest size and some fields. */
    public static final long LARGEST = 1_100_000;

    private final Map<String, String> fields;

    private FormBody(Map<String, String> fields) {
        this.fields = fields;
    }

    static FormBody read(Context ctx) {
        String type = ctx.contentType();
        if (type == null || !type.startsWith("application/x-www-form-urlencoded")) {
            throw new BadRequestResponse("A form was expected.");
        }
        byte[] bytes;
        try (InputStream in = ctx.req().getInputStream()) {
            bytes = in.readNBytes((int) LARGEST + 1);
        } catch (IOException broken) {
            throw new UncheckedIOException(broken);
        }
        if (bytes.length > LARGEST) {
            throw new ContentTooLargeResponse();
        }
        Map<String, String> fields = new HashMap<>();
        for (String pair : new String(bytes, StandardCharsets.US_ASCII).split("&", 40)) {
            int equals = pair.indexOf('=');
            if (equals > 0) {
                fields.put(decoded(pair.substring(0, equals)), decoded(pair.substring(equals + 1)));
            }
        }
        return new FormBody(fields);
    }

    private static String decoded(String text) {
        try {
            return URLDecoder.decode(text, StandardCharsets.UTF_8);
        } catch (IllegalArgumentException malformed) {
            throw new BadRequestResponse("The form cannot be read.");
        }
    }

    @Nullable
    String field(String name) {
        return fields.get(name);
    }

    /** A text of several lines, with one kind of line end. */
    String text(String name) {
        String text = fields.get(name);
        if (text == null) {
            throw new BadRequestResponse("The form has no " + name + ".");
        }
        return text.replace("\r\n", "\n").replace('\r', '\n');
    }

    int number(String name) {
        try {
            String text = fields.get(name);
            return Integer.parseInt(text == null ? "" : text);
        } catch (NumberFormatException none) {
            throw new BadRequestResponse("The form has no " + name + ".");
        }
    }
}
