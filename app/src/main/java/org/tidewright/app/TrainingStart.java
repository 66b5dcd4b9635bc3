package org.tidewright.app;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.PipedInputStream;
import java.io.PipedOutputStream;
import java.io.PrintStream;
import java.net.URI;
import java.net.URLConnection;
import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.util.LinkedHashSet;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A start that is thrown away: serves the demo, fetches its pages once and exits. The launcher runs it so that Java can
 * keep the classes a start needs in an archive, which makes every later start quicker.
 *
 * <p>Leans on one promise of the program only: {@code demo} prints a line with its address.
 */
public final class TrainingStart {
    private static final Pattern ADDRESS = Pattern.compile("http://127\\.0\\.0\\.1:\\d+/?");
    private static final Pattern LINK = Pattern.compile("(?:href|src)=\"(/[^\"#]*)");
    private static final Duration LIMIT = Duration.ofSeconds(60);
    private static final int GAVE_UP = 1;

    private TrainingStart() {}

    public static void main(String[] arguments) throws IOException {
        // Buffered wide enough that the program never waits for this reader.
        PipedInputStream said = new PipedInputStream(1 << 20);
        PrintStream out = new PrintStream(new PipedOutputStream(said), true, StandardCharsets.UTF_8);
        background("give up", TrainingStart::giveUpInTime);
        background("program", () -> Main.run(out, System.err, "demo", "--port", "0"));

        URI site = addressIn(new BufferedReader(new InputStreamReader(said, StandardCharsets.UTF_8)));
        String first = fetched(site);
        for (String link : linksOf(first)) {
            fetched(site.resolve(link));
        }
        System.exit(0);
    }

    private static void background(String name, Runnable work) {
        Thread thread = new Thread(work, name);
        thread.setDaemon(true);
        thread.start();
    }

    private static void giveUpInTime() {
        try {
            Thread.sleep(LIMIT.toMillis());
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
        Runtime.getRuntime().halt(GAVE_UP);
    }

    private static URI addressIn(BufferedReader said) throws IOException {
        for (String line = said.readLine(); line != null; line = said.readLine()) {
            Matcher address = ADDRESS.matcher(line);
            if (address.find()) {
                return URI.create(address.group()).resolve("/");
            }
        }
        throw new IOException("the demo ended without saying its address");
    }

    private static Set<String> linksOf(String page) {
        Set<String> links = new LinkedHashSet<>();
        for (Matcher link = LINK.matcher(page); link.find(); ) {
            links.add(link.group(1).replace("&amp;", "&"));
        }
        return links;
    }

    private static String fetched(URI page) throws IOException {
        URLConnection connection = page.toURL().openConnection();
        connection.setReadTimeout((int) LIMIT.toMillis());
        try (InputStream body = connection.getInputStream()) {
            return new String(body.readAllBytes(), StandardCharsets.UTF_8);
        }
    }
}
