package org.tidewright.web.route;

import io.javalin.http.BadRequestResponse;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.util.HashMap;
import java.util.Map;
import org.eclipse.jetty.http.MultiPart;
import org.eclipse.jetty.http.MultiPartFormData;
import org.eclipse.jetty.io.Content;
import org.eclipse.jetty.util.Blocker;

/** A form with files, RFC 7578. All of it is in memory: the body was read up to a bound before. */
final class Multipart {
    /** More fields than the widest spreadsheet's page has. */
    private static final int MOST_PARTS = 2_000;

    private Multipart() {}

    static FormBody read(String contentType, byte[] body) {
        String boundary = MultiPart.extractBoundary(contentType);
        if (boundary == null || boundary.isEmpty()) {
            throw unreadable();
        }
        MultiPartFormData.Parser parser = new MultiPartFormData.Parser(boundary);
        parser.setMaxParts(MOST_PARTS);
        // Nothing is laid out on disk.
        parser.setMaxMemoryFileSize(-1);
        parser.setUseFilesForPartsWithoutFileName(false);
        Map<String, String> fields = new HashMap<>();
        Map<String, FormBody.File> files = new HashMap<>();
        try (MultiPartFormData.Parts parts = parsed(parser, body)) {
            for (MultiPart.Part part : parts) {
                String name = part.getName();
                String file = part.getFileName();
                if (name == null) {
                    throw unreadable();
                } else if (file == null) {
                    fields.putIfAbsent(name, new String(bytes(part), StandardCharsets.UTF_8));
                } else if (!file.isEmpty() || part.getLength() > 0) {
                    files.putIfAbsent(name, FormBody.File.of(file, bytes(part)));
                }
            }
        }
        return new FormBody(fields, files);
    }

    private static MultiPartFormData.Parts parsed(MultiPartFormData.Parser parser, byte[] body) {
        try (Blocker.Promise<MultiPartFormData.Parts> parts = Blocker.promise()) {
            parser.parse(Content.Source.from(ByteBuffer.wrap(body)), parts);
            return parts.block();
        } catch (IOException | RuntimeException broken) {
            // The parser says so by many kinds of exceptions, all about what was sent.
            throw unreadable();
        }
    }

    private static byte[] bytes(MultiPart.Part part) {
        try (InputStream in = Content.Source.asInputStream(part.getContentSource())) {
            return in.readAllBytes();
        } catch (IOException impossible) {
            throw new UncheckedIOException(impossible);
        }
    }

    private static BadRequestResponse unreadable() {
        return new BadRequestResponse("The form came broken; nothing was kept. Go back and send it once more.");
    }
}
