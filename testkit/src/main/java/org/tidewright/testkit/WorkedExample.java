package org.tidewright.testkit;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;

/**
 * The plan, as text, of the system that was worked through by a script in another language, apart from this code. Its
 * answers stand beside the checks that use them; they were given to four digits, times to 1 %.
 */
public final class WorkedExample {
    private WorkedExample() {}

    /** The plan file. */
    public static String text() {
        try (InputStream bytes = WorkedExample.class.getResourceAsStream("worked-example.yaml")) {
            if (bytes == null) {
                throw new IllegalStateException("worked-example.yaml is missing from this build");
            }
            return new String(bytes.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException unreadable) {
            throw new UncheckedIOException(unreadable);
        }
    }
}
