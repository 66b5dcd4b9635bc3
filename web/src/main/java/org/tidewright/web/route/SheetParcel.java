package org.tidewright.web.route;

import io.javalin.http.BadRequestResponse;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.Base64;
import java.util.zip.GZIPInputStream;
import java.util.zip.GZIPOutputStream;

/**
 * A spreadsheet's file as a text that travels in its page from one step of the import to the next. So the server holds
 * nothing between steps: there is nothing to expire, the page may be loaded again, and a restart loses nothing. It is
 * packed since columns of numbers shrink to a third, and kept to the byte whatever characters it is written in.
 */
final class SheetParcel {
    /** Largest file, bytes: a year of five columns each five minutes has about 5 MB. */
    static final int LARGEST = 8_000_000;

    private SheetParcel() {}

    static String pack(byte[] file) {
        ByteArrayOutputStream packed = new ByteArrayOutputStream(file.length / 2);
        try (GZIPOutputStream gzip = new GZIPOutputStream(packed)) {
            gzip.write(file);
        } catch (IOException impossible) {
            throw new UncheckedIOException(impossible);
        }
        return Base64.getUrlEncoder().withoutPadding().encodeToString(packed.toByteArray());
    }

    static byte[] open(String parcel) {
        try (GZIPInputStream gzip = new GZIPInputStream(
                new ByteArrayInputStream(Base64.getUrlDecoder().decode(parcel.strip())))) {
            byte[] file = gzip.readNBytes(LARGEST + 1);
            if (file.length <= LARGEST) {
                return file;
            }
        } catch (IOException | IllegalArgumentException noParcel) {
            // Told below.
        }
        throw new BadRequestResponse("The form has lost the spreadsheet; nothing was kept. Choose the file once more.");
    }
}
