package org.tidewright.app.cli;

import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.lang.management.ManagementFactory;
import java.net.HttpURLConnection;
import java.net.URI;
import java.util.Locale;

/** How long the program takes from its start to its first page, found by asking for it. */
final class StartTime {
    private static final int LONGEST_WAIT_MS = 30_000;

    private StartTime() {}

    /** Asks for the first page and says when it came. */
    static String toFirstPage(String address, int port) {
        try {
            HttpURLConnection first = (HttpURLConnection)
                    URI.create("http://" + address + ":" + port + "/").toURL().openConnection();
            first.setReadTimeout(LONGEST_WAIT_MS);
            int status = first.getResponseCode();
            try (InputStream page = first.getInputStream()) {
                page.transferTo(OutputStream.nullOutputStream());
            }
            double seconds = (System.currentTimeMillis()
                            - ManagementFactory.getRuntimeMXBean().getStartTime())
                    / 1000.0;
            return String.format(
                    Locale.ROOT, "First page %.1f s after the program's start (status %d).", seconds, status);
        } catch (IOException unanswered) {
            return "The first page did not answer: " + unanswered.getMessage();
        }
    }
}
