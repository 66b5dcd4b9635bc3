package org.tidewright.plan;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;

/** The example plans that come with the program: systems of an invented scenario. */
public final class Examples {
    /** Their names, the demo's first. */
    public static final List<String> NAMES =
            List.of("harbour-room", "fifty-five-gallon", "window-nano", "quarantine-box");

    private Examples() {}

    /** The text of an example. */
    public static String text(String name) {
        if (!NAMES.contains(name)) {
            throw new IllegalArgumentException(
                    "no example is called " + name + "; there are " + String.join(", ", NAMES));
        }
        try (InputStream in = Examples.class.getResourceAsStream("example/" + name + ".yaml")) {
            if (in == null) {
                throw new IllegalStateException("the example " + name + " is missing from this build");
            }
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException unreadable) {
            throw new UncheckedIOException(unreadable);
        }
    }
}
