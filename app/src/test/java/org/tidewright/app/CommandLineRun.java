package org.tidewright.app;

import java.io.ByteArrayOutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;

/** One command line, run in this process, with what it printed. */
public record CommandLineRun(int exitCode, String out, String err) {
    public static CommandLineRun of(String... arguments) {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        ByteArrayOutputStream err = new ByteArrayOutputStream();
        int code = Main.run(
                new PrintStream(out, true, StandardCharsets.UTF_8),
                new PrintStream(err, true, StandardCharsets.UTF_8),
                arguments);
        return new CommandLineRun(code, out.toString(StandardCharsets.UTF_8), err.toString(StandardCharsets.UTF_8));
    }

    /** What it printed, as if on one line. */
    public String words() {
        return out.replaceAll("\\s+", " ");
    }
}
