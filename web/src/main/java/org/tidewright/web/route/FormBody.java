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

/**
 * The fields of a sent form and the files that came with them, read up to a bound whether or not the browser said how long
 * it is.
 */
public final class FormBody {
    /** Largest body of a form without files, bytes: a plan of the largest size and some fields. */
    public static final int LARGEST = 1_100_000;

    private static final String TOO_LARGE = "A plan is a few kilobytes of text; at most 1.1 MB is taken.";

    /**
     * What is read on and thrown away behind the bound, bytes: a browser shows the answer only once it has sent all it
     * meant to send.
     */
    private static final long THROWN_AWAY = 300_000_000;

    private final Map<String, String> fields;
    private final Map<String, File> files;

    FormBody(Map<String, String> fields, Map<String, File> files) {
        this.fields = fields;
        this.files = files;
    }

    /**
     * A file that came with a form.
     *
     * @param name as the sender calls it, without folders and signs that are no text; says nothing of what is in it
     */
    record File(String name, byte[] bytes) {
        private static final int LONGEST_NAME = 80;

        static File of(String sent, byte[] bytes) {
            String bare = sent.substring(Math.max(sent.lastIndexOf('/'), sent.lastIndexOf('\\')) + 1);
            String text = bare.replaceAll("[\\p{Cntrl}\\p{Cf}\\p{Cs}]", " ").strip();
            return new File(text.length() > LONGEST_NAME ? text.substring(0, LONGEST_NAME - 1) + "…" : text, bytes);
        }
    }

    /** A form without files. */
    static FormBody read(Context ctx) {
        return read(ctx, LARGEST, TOO_LARGE);
    }

    /**
     * A form that may bring files.
     *
     * @param tooLarge what is told of one that is longer than the bound
     */
    static FormBody read(Context ctx, int largest, String tooLarge) {
        String type = ctx.contentType();
        if (type != null && type.startsWith("application/x-www-form-urlencoded")) {
            return new FormBody(pairs(bytes(ctx, LARGEST, TOO_LARGE)), Map.of());
        } else if (type != null && type.startsWith("multipart/form-data")) {
            return Multipart.read(type, bytes(ctx, largest, tooLarge));
        }
        throw new BadRequestResponse("A form was expected.");
    }

    private static byte[] bytes(Context ctx, int largest, String tooLarge) {
        try (InputStream in = ctx.req().getInputStream()) {
            byte[] bytes = in.readNBytes(largest + 1);
            if (bytes.length <= largest) {
                return bytes;
            }
            in.skip(THROWN_AWAY);
        } catch (IOException broken) {
            throw new UncheckedIOException(broken);
        }
        throw new ContentTooLargeResponse(tooLarge);
    }

    private static Map<String, String> pairs(byte[] body) {
        Map<String, String> fields = new HashMap<>();
        for (String pair : new String(body, StandardCharsets.US_ASCII).split("&", 40)) {
            int equals = pair.indexOf('=');
            if (equals > 0) {
                fields.put(decoded(pair.substring(0, equals)), decoded(pair.substring(equals + 1)));
            }
        }
        return fields;
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

    /** Null where none was chosen. */
    @Nullable
    File file(String name) {
        return files.get(name);
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
