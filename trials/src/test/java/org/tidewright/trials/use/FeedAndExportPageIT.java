package org.tidewright.trials.use;

import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Page;
import java.util.regex.Pattern;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;

/** The page Feed and export as a keeper uses it. */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class FeedAndExportPageIT {
    private static final String PAGE = "systems/harbour-room/feed-and-export";

    private final Program program = Program.demo();
    private final Chromium chromium = Chromium.start();

    private Page open(Visit visit, String path) {
        return visit.open(program.address().resolve(path));
    }

    private static String lead(Page page) {
        return page.locator("#lead").textContent();
    }

    private static String sum(Page page) {
        return page.locator(".flow-table tr.sum td").last().textContent();
    }

    @Test
    void aSliderChangesSentenceTableAndAddress() {
        try (Visit visit = chromium.visit(Screen.DESK_LIGHT)) {
            Page page = open(visit, PAGE);
            String before = sum(page);
            assertThat(page.locator("[data-flows] .flow-way").count()).isGreaterThan(8);
            page.locator("#feed_percent").fill("70");
            page.waitForCondition(() -> lead(page).startsWith("Set the feed as you like: at 70"));
            assertThat(Double.parseDouble(sum(page))).isLessThan(0.9 * Double.parseDouble(before));
            assertThat(page.locator("td[data-changed]").count()).isEqualTo(3);
            assertThat(page.url()).endsWith("?feed_percent=70");
            page.locator("#back-to-plan").click();
            page.waitForCondition(() -> lead(page).startsWith("Leave the feed as it is"));
            assertThat(page.locator("#feed_percent").inputValue()).isEqualTo("100");
            visit.assertNothingWentWrong();
        }
    }

    @Test
    void phosphorusHasAPictureOfItsOwn() {
        try (Visit visit = chromium.visit(Screen.PHONE_DARK)) {
            Page page = open(visit, PAGE);
            page.locator("label", new Page.LocatorOptions().setHasText("phosphorus"))
                    .click();
            page.waitForCondition(
                    () -> page.locator("#flows-head").textContent().contains("phosphorus"));
            assertThat(page.locator("[data-flows]").textContent()).contains("phosphate reactor");
            visit.assertNothingWentWrong();
            visit.assertNothingSticksOut();
            visit.assertAccessible();
        }
    }

    @Test
    void aSliderIsMovedByKeyboardAndKeepsTheFocus() {
        try (Visit visit = chromium.visit(Screen.DESK_LIGHT)) {
            Page page = open(visit, PAGE);
            for (int tab = 0; tab < 40 && !focusIsOn(page, "#feed_percent"); tab++) {
                page.keyboard().press("Tab");
            }
            page.keyboard().press("ArrowLeft");
            page.keyboard().press("ArrowLeft");
            assertThat(page.locator("#feed_percent").getAttribute("aria-valuetext"))
                    .contains("90")
                    .contains("the plan has 100");
            page.waitForCondition(() -> page.url().endsWith("?feed_percent=90"));
            assertThat(focusIsOn(page, "#feed_percent")).isTrue();
            visit.assertNothingWentWrong();
        }
    }

    @Test
    void twoSlidersAtOnceAreWarnedOf() {
        try (Visit visit = chromium.visit(Screen.DESK_LIGHT)) {
            Page page = open(visit, PAGE + "?feed_percent=60&skimmer_strength_percent=150");
            assertThat(lead(page)).startsWith("Move one thing at a time");
            assertThat(page.locator(".caution").allTextContents())
                    .anyMatch(words -> words.contains("Never change two things at once"));
        }
    }

    @Test
    void theFormAndTheTableWorkWithoutScript() {
        try (Visit visit = chromium.visitWithoutScript(Screen.DESK_LIGHT)) {
            Page page = open(visit, PAGE);
            assertThat(page.locator(".flow-table").isVisible()).isTrue();
            page.locator("#feed_percent").fill("70");
            page.locator("#handles-go").click();
            page.waitForURL(Pattern.compile(".*feed_percent=70.*"));
            assertThat(lead(page)).startsWith("Set the feed as you like: at 70");
        }
    }

    private static boolean focusIsOn(Page page, String selector) {
        return (Boolean) page.evaluate("s => document.activeElement.matches(s)", selector);
    }

    @AfterAll
    void stop() {
        chromium.close();
        program.close();
    }
}
