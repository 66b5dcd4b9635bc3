package org.tidewright.husbandry.journal;

import static java.nio.charset.StandardCharsets.ISO_8859_1;

import java.util.Arrays;
import java.util.Optional;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/** Kinds of picture files that are kept, and the bytes they begin with: what a sender calls a file proves nothing. */
public enum PictureKind {
    /** Start of image, and the marker after it: ITU-T T.81 (1992), B.1.1.3. */
    JPEG("image/jpeg", "\\xFF\\xD8\\xFF"),
    /** W3C, Portable Network Graphics, third edition, 5.2. */
    PNG("image/png", "\\x89PNG\\r\\n\\x1A\\n"),
    /** RFC 9649, 2.4. */
    WEBP("image/webp", "RIFF[\\x00-\\xFF]{4}WEBP");

    private static final int LONGEST_BEGINNING = 12;

    private final String mediaType;
    private final Pattern beginning;

    PictureKind(String mediaType, String beginning) {
        this.mediaType = mediaType;
        this.beginning = Pattern.compile(beginning);
    }

    public String mediaType() {
        return mediaType;
    }

    /** The kind a file is of by its first bytes; empty for all others. */
    public static Optional<PictureKind> of(byte[] bytes) {
        String begins = new String(bytes, 0, Math.min(bytes.length, LONGEST_BEGINNING), ISO_8859_1);
        return Arrays.stream(values())
                .filter(kind -> kind.beginning.matcher(begins).lookingAt())
                .findFirst();
    }

    /** All of them, as a sentence lists them. */
    public static String allMediaTypes() {
        return Arrays.stream(values()).map(PictureKind::mediaType).collect(Collectors.joining(", "));
    }
}
