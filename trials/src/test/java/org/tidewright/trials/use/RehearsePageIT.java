package org.tidewright.trials.use;

import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;

/** The Rehearse page as a keeper uses it. */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class RehearsePageIT {
    private static final String PAGE = "systems/harbour-room/rehearse";

    private final Program program = Program.demo();
    private final Chromium chromium = Chromium.start();

    @Test
    void theScrubberMovesTheWaterAndTheLedgersSumStays() {
        try (Visit visit = chromium.visit(Screen.DESK_LIGHT)) {
            Page page = open(visit, PAGE);
            String levelBefore = displayLevel(page);
            String sum = ledgerSum(page);
            page.locator("[data-scrub]").fill("120");
            assertThat(displayLevel(page)).isNotEqualTo(levelBefore);
            assertThat(ledgerSum(page)).isEqualTo(sum);
            assertThat(page.locator("[data-clock]").textContent()).contains("s");
            assertThat(page.locator("[data-scrub]").getAttribute("aria-valuetext"))
                    .contains("°C")
                    .contains("mg/L");
            visit.assertNothingWentWrong();
        }
    }

    @Test
    void theWholeCutCanBeFollowedByKeyboardAlone() {
        try (Visit visit = chromium.visit(Screen.DESK_LIGHT)) {
            Page page = open(visit, PAGE);
            for (int tab = 0; tab < 40 && !focusIsOn(page, "[data-scrub]"); tab++) {
                page.keyboard().press("Tab");
            }
            assertThat(focusIsOn(page, "[data-scrub]"))
                    .as("the scrubber is reached by Tab")
                    .isTrue();
            String before = displayLevel(page);
            for (int press = 0; press < 60; press++) {
                page.keyboard().press("ArrowRight");
            }
            assertThat(displayLevel(page)).isNotEqualTo(before);
            page.keyboard().press("End");
            assertThat(page.locator("[data-clock]").textContent()).contains("24 h");
        }
    }

    @Test
    void aBlockedAirHolePutsWaterOnTheFloorAndTheLeadSaysSo() {
        try (Visit visit = chromium.visit(Screen.PHONE_LIGHT)) {
            Page page = open(visit, PAGE);
            assertThat(page.locator("#lead").textContent()).contains("The floor stays dry");
            page.locator("label", new Page.LocatorOptions().setHasText("blocked"))
                    .first()
                    .click();
            page.waitForCondition(() -> page.locator("#lead").textContent().contains("Clear the air hole today"));
            assertThat(page.locator("#lead").textContent()).contains("reach the floor");
            visit.assertNothingWentWrong();
        }
    }

    @Test
    void theLeversWorkWithoutScript() {
        try (Visit visit = chromium.visitWithoutScript(Screen.DESK_LIGHT)) {
            Page page = open(visit, PAGE);
            page.locator("#lever-outdoor").fill("35");
            page.locator("#lever-go").click();
            page.waitForURL(Pattern.compile(".*outdoor_c=35.*"));
            assertThat(page.locator("#lead").textContent()).contains("35").contains("outdoors");
            assertThat(page.locator("details:has-text('Show as table') table").count())
                    .isGreaterThan(2);
        }
    }

    @Test
    void aLeverOutOfRangeIsExplainedAndTheRestStaysUsable() {
        try (Visit visit = chromium.visitWithoutScript(Screen.DESK_LIGHT)) {
            Page page = open(visit, PAGE + "?hours=9999&outdoor_c=900");
            assertThat(page.locator("#hours-fault").textContent()).contains("from 1 to 168 hours");
            assertThat(page.locator("#outdoor-fault").textContent()).contains("from −40 to 50");
            assertThat(page.locator("#lead").textContent()).contains("The floor stays dry");
        }
    }

    @Test
    void unitsAreTheReadersChoice() {
        try (Visit visit = chromium.visit(Screen.DESK_LIGHT)) {
            Page page = open(visit, PAGE + "?units=us");
            assertThat(page.locator("#lead").textContent()).contains("gal").contains("°F");
            // The choice is kept from page to page.
            page.navigate(
                    program.address().resolve("systems/harbour-room/build").toString());
            assertThat(page.locator(".lead").textContent()).contains("gal");
        }
    }

    @Test
    void theNanoSaysWhyNothingFallsBack() {
        try (Visit visit = chromium.visit(Screen.PHONE_DARK)) {
            Page page = open(visit, "systems/window-nano/rehearse");
            assertThat(page.locator("#lead").textContent()).contains("nothing falls back");
        }
    }

    private Page open(Visit visit, String path) {
        visit.open(program.address().resolve(path));
        return visit.page();
    }

    private static boolean focusIsOn(Page page, String selector) {
        return (Boolean) page.evaluate("s => document.activeElement.matches(s)", selector);
    }

    /** Height of the display's surface in the drawing, as its label tells it. */
    private static String displayLevel(Page page) {
        Matcher level = Pattern.compile("\\d[\\d.]* (mm|in)")
                .matcher(page.locator("[data-drawing] svg").textContent().replace('\u00a0', ' '));
        assertThat(level.find()).isTrue();
        return level.group();
    }

    private static String ledgerSum(Page page) {
        Locator sum = page.locator("tr.sum td");
        return sum.last().textContent();
    }

    @AfterAll
    void stop() {
        chromium.close();
        program.close();
    }
}
