package org.tidewright.trials.use;

import static org.assertj.core.api.Assertions.assertThat;

import com.deque.html.axecore.playwright.AxeBuilder;
import com.deque.html.axecore.results.Rule;
import com.microsoft.playwright.BrowserContext;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.Response;
import com.microsoft.playwright.options.LoadState;
import java.net.URI;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;

/** One reader at the pages of the program, and all that went wrong under the surface. */
public final class Visit implements AutoCloseable {
    private static final Set<String> SERIOUS = Set.of("serious", "critical");
    private static final int MOST_TABS = 150;

    private final BrowserContext context;
    private final Page page;
    private final List<String> faults = new ArrayList<>();

    private final boolean withScript;

    Visit(BrowserContext context, boolean withScript) {
        this.withScript = withScript;
        this.context = context;
        // The browser's own message names the directive only; this one names the line.
        context.addInitScript("document.addEventListener('securitypolicyviolation', e => console.error("
                + "'content security policy: ' + e.violatedDirective + ' ' + e.blockedURI + ' ' + e.sourceFile"
                + " + ':' + e.lineNumber))");
        page = context.newPage();
        page.onConsoleMessage(message -> {
            if (Set.of("error", "warning").contains(message.type())) {
                faults.add("console " + message.type() + ": " + message.text() + " " + message.location());
            }
        });
        page.onPageError(error -> faults.add("script: " + error));
        page.onRequestFailed(request -> faults.add("request failed: " + request.url() + " " + request.failure()));
        page.onResponse(response -> {
            if (response.status() >= 400) {
                faults.add("answer " + response.status() + ": " + response.url());
            }
        });
    }

    /** Opens a page and waits until nothing more is fetched. */
    public Page open(URI address) {
        Response answer = page.navigate(address.toString());
        assertThat(answer).as("answer of %s", address).isNotNull();
        page.waitForLoadState(LoadState.LOAD);
        return page;
    }

    public Page page() {
        return page;
    }

    /** Comes to something as somebody without a mouse does. */
    public void tabTo(String selector) {
        for (int tab = 0; tab < MOST_TABS; tab++) {
            if ((Boolean) page.evaluate("selector => document.activeElement.matches(selector)", selector)) {
                return;
            }
            page.keyboard().press("Tab");
        }
        throw new AssertionError("no Tab leads to " + selector + " at " + page.url());
    }

    /** Shows everything that is folded away. */
    public void unfoldAll() {
        page.evaluate("document.querySelectorAll('main details').forEach(d => { d.open = true; })");
    }

    /** No console error or warning, no broken script, no refused or failed request, no breach of the content policy. */
    public void assertNothingWentWrong() {
        assertThat(faults).as("what went wrong at %s", page.url()).isEmpty();
    }

    /** Nothing sticks out to the right of a narrow screen. */
    public void assertNothingSticksOut() {
        assertThat(page.evaluate("document.documentElement.scrollWidth - document.documentElement.clientWidth"))
                .as("pixels that %s is wider than the screen", page.url())
                .isEqualTo(0);
    }

    /** None of the automatic checks of WCAG finds something serious or critical. */
    public void assertAccessible() {
        if (!withScript) {
            throw new IllegalStateException("the checks are a script themselves; this visit runs none");
        }
        List<String> barriers = new AxeBuilder(page)
                .analyze().getViolations().stream()
                        .filter(rule -> SERIOUS.contains(rule.getImpact()))
                        .map(Visit::told)
                        .toList();
        assertThat(barriers).as("barriers at %s", page.url()).isEmpty();
    }

    private static String told(Rule rule) {
        List<String> places =
                rule.getNodes().stream().map(node -> node.getHtml()).limit(5).toList();
        return rule.getImpact() + " " + rule.getId() + ": " + rule.getHelp() + " " + places;
    }

    @Override
    public void close() {
        context.close();
    }
}
