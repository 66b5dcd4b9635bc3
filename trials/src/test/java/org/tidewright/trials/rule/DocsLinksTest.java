package org.tidewright.trials.rule;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

/** Links in the project's pages lead somewhere. */
class DocsLinksTest {
    /** {@code [text](target)}, {@code ![text](target)}, {@code [name]: target} and {@code <img src="target">}. */
    private static final Pattern LINK = Pattern.compile(
            "\\]\\(\\s*<?([^)\\s>]+)|^\\[[^\\]]+\\]:\\s+(\\S+)|(?:src|href)=\"([^\"]+)\"", Pattern.MULTILINE);

    private static final Pattern ELSEWHERE = Pattern.compile("^(?:[a-z][a-z0-9+.-]*:|//|#).*", Pattern.DOTALL);
    private static final Pattern FENCED = Pattern.compile("^```.*?^```", Pattern.MULTILINE | Pattern.DOTALL);

    @Test
    void everyLinkToAFileFindsIt() {
        List<Path> pages = Checkout.trackedFiles().stream()
                .filter(file -> file.toString().endsWith(".md"))
                .toList();
        assertThat(pages).as("pages found").isNotEmpty();
        List<String> broken = new ArrayList<>();
        for (Path page : pages) {
            for (String target : targets(Checkout.text(page))) {
                if (!Files.exists(page.resolveSibling(target.replaceFirst("#.*", "")))) {
                    broken.add(Checkout.name(page) + " links to " + target);
                }
            }
        }
        assertThat(broken).isEmpty();
    }

    private static List<String> targets(String page) {
        List<String> targets = new ArrayList<>();
        for (Matcher link = LINK.matcher(FENCED.matcher(page).replaceAll("")); link.find(); ) {
            String target =
                    link.group(1) != null ? link.group(1) : link.group(2) != null ? link.group(2) : link.group(3);
            if (!ELSEWHERE.matcher(target).matches()) {
                targets.add(target);
            }
        }
        return targets;
    }
}
