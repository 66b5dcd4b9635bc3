package org.tidewright.husbandry.spreadsheet;

import java.io.BufferedInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.Reader;
import java.io.Writer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;

/** Finds out in which characters a file is written. */
final class TextEncoding {
    static final Charset WINDOWS = Charset.forName("windows-1252");

    private static final int BEGINNING = 4096;
    private static final byte[] ZIP = {'P', 'K', 3, 4};
    private static final byte[] OLD_WORKBOOK = {(byte) 0xD0, (byte) 0xCF, 0x11, (byte) 0xE0};

    private TextEncoding() {}

    /** By its byte order mark; else UTF-8 where all of it is valid UTF-8; else Windows-1252, in which any byte is a character. */
    static Charset of(SheetSource source) throws IOException, UnusableSheet {
        try (InputStream in = new BufferedInputStream(source.open())) {
            in.mark(BEGINNING);
            byte[] start = in.readNBytes(BEGINNING);
            in.reset();
            refuseWorkbooks(start);
            if (begins(start, 0xFF, 0xFE)) {
                return StandardCharsets.UTF_16LE;
            } else if (begins(start, 0xFE, 0xFF)) {
                return StandardCharsets.UTF_16BE;
            }
            for (byte b : start) {
                if (b == 0) {
                    throw new UnusableSheet("the file holds bytes that are no text; save it as CSV in UTF-8");
                }
            }
            return isUtf8(in) ? StandardCharsets.UTF_8 : WINDOWS;
        }
    }

    private static void refuseWorkbooks(byte[] start) throws UnusableSheet {
        if (start.length == 0) {
            throw new UnusableSheet("the file is empty");
        }
        byte[] four = Arrays.copyOf(start, 4);
        if (Arrays.equals(four, ZIP) || Arrays.equals(four, OLD_WORKBOOK)) {
            throw new UnusableSheet(
                    "this is a spreadsheet itself; open it and save the sheet with your readings as CSV (UTF-8)");
        }
    }

    private static boolean begins(byte[] bytes, int first, int second) {
        return bytes.length >= 2 && (bytes[0] & 0xFF) == first && (bytes[1] & 0xFF) == second;
    }

    private static boolean isUtf8(InputStream in) throws IOException {
        try (Reader strict = new InputStreamReader(in, StandardCharsets.UTF_8.newDecoder())) {
            strict.transferTo(Writer.nullWriter());
            return true;
        } catch (CharacterCodingException other) {
            return false;
        }
    }
}
