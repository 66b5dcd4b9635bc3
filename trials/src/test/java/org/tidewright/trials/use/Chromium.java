package org.tidewright.trials.use;

import com.microsoft.playwright.Browser;
import com.microsoft.playwright.BrowserType;
import com.microsoft.playwright.Playwright;
import java.io.File;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.tidewright.trials.rule.Checkout;

/** The system's Chromium, driven without a window. */
public final class Chromium implements AutoCloseable {
    private static final List<String> ARGUMENTS = List.of(
            "--no-sandbox",
            "--disable-gpu",
            "--disable-quic",
            "--no-first-run",
            "--disable-background-networking",
            "--disable-component-update",
            "--disable-sync");

    private final Playwright playwright;
    private final Browser browser;

    private Chromium(Playwright playwright, Browser browser) {
        this.playwright = playwright;
        this.browser = browser;
    }

    public static Chromium start() {
        Path driver = Checkout.root().resolve("target/playwright");
        if (!Files.exists(driver.resolve("package/cli.js"))) {
            throw new IllegalStateException(
                    driver + " is missing: ./check lays it out; -DskipITs leaves these tests out");
        }
        System.setProperty("playwright.cli.dir", driver.toString());
        Map<String, String> environment = new HashMap<>(System.getenv());
        environment.put("PLAYWRIGHT_NODEJS_PATH", onPath("node", "nodejs").toString());
        environment.put("PLAYWRIGHT_SKIP_BROWSER_DOWNLOAD", "1");
        Playwright playwright = Playwright.create(new Playwright.CreateOptions().setEnv(environment));
        try {
            Path program = onPath("chromium", "chromium-browser", "google-chrome", "google-chrome-stable");
            Browser browser = playwright
                    .chromium()
                    .launch(new BrowserType.LaunchOptions()
                            .setExecutablePath(program)
                            .setHeadless(true)
                            .setArgs(ARGUMENTS));
            return new Chromium(playwright, browser);
        } catch (RuntimeException e) {
            playwright.close();
            throw e;
        }
    }

    /** A reader with a fresh profile. */
    public Visit visit(Screen screen) {
        return new Visit(browser.newContext(options(screen)), true);
    }

    /** A reader whose browser runs no script. */
    public Visit visitWithoutScript(Screen screen) {
        return new Visit(browser.newContext(options(screen).setJavaScriptEnabled(false)), false);
    }

    private static Browser.NewContextOptions options(Screen screen) {
        return new Browser.NewContextOptions()
                .setViewportSize(screen.width, screen.height)
                .setColorScheme(screen.scheme)
                .setLocale("en-GB");
    }

    @Override
    public void close() {
        browser.close();
        playwright.close();
    }

    private static Path onPath(String... names) {
        List<Path> folders = Pattern.compile(Pattern.quote(File.pathSeparator))
                .splitAsStream(System.getenv().getOrDefault("PATH", ""))
                .map(Path::of)
                .toList();
        return Stream.of(names)
                .flatMap(name -> folders.stream().map(folder -> folder.resolve(name)))
                .filter(Files::isExecutable)
                .findFirst()
                .orElseThrow(() -> new IllegalStateException("none of " + List.of(names) + " is on the path"));
    }
}
