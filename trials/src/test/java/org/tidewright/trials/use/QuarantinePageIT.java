package org.tidewright.trials.use;

import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import java.util.regex.Pattern;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;

/** Quarantine as a keeper uses it, over the demo's invented log. The tests change it, so each begins from a demo of its own. */
class QuarantinePageIT {
    private static final String BOX = "systems/quarantine-box/quarantine";

    private final Program program = Program.demo();
    private final Chromium chromium = Chromium.start();

    private Page open(Visit visit, String path) {
        visit.open(program.address().resolve(path));
        return visit.page();
    }

    @Test
    void todaysLookIsInTheLogAfterTwoTapsOnAPhone() {
        try (Visit visit = chromium.visit(Screen.PHONE_LIGHT)) {
            Page page = open(visit, BOX);
            assertThat(page.locator("[data-lead]").textContent()).startsWith("Look at them today");
            visit.assertNothingSticksOut();
            page.locator("#look .choice label", new Page.LocatorOptions().setHasText("everything"))
                    .click();
            page.locator("#look button[type=submit]").first().click();
            page.waitForURL(Pattern.compile(".*/quarantine\\?kept=.*"));
            assertThat(page.locator("[role=status]").textContent()).isEqualTo("In the log: watched all: ate all.");
            assertThat(page.locator("[data-lead]").textContent()).startsWith("Nothing more today");
            visit.assertNothingWentWrong();
            visit.assertAccessible();
        }
    }

    @Test
    void aSignIsTickedByKeyboardAndBeginsTheCountAnew() {
        try (Visit visit = chromium.visit(Screen.DESK_LIGHT)) {
            Page page = open(visit, BOX);
            String before = page.locator(".why.end").textContent();
            page.locator("input[name=ate][value=some]").focus();
            page.keyboard().press("Space");
            page.locator("input[name=sign_scratching]").focus();
            page.keyboard().press("Space");
            assertThat(page.locator("label.sign:has(:checked)").count()).isEqualTo(1);
            page.locator("#look-breaths").fill("70");
            page.locator("#look-remark").fill("on the pipe");
            page.keyboard().press("Enter");
            page.waitForURL(Pattern.compile(".*/quarantine\\?kept=.*"));
            assertThat(page.locator("[data-lead]").textContent())
                    .startsWith("Ask a veterinarian")
                    .contains("scratching");
            assertThat(page.locator(".why.end").textContent())
                    .isNotEqualTo(before)
                    .containsPattern("30\\s*days")
                    .contains("seen: scratching");
            visit.assertNothingWentWrong();
        }
    }

    @Test
    void whatIsMissingIsAskedForAndNothingTypedIsLostWithoutScript() {
        try (Visit visit = chromium.visitWithoutScript(Screen.PHONE_LIGHT)) {
            Page page = open(visit, BOX);
            page.locator("#look-breaths").fill("many");
            page.locator("label.sign", new Page.LocatorOptions().setHasText("cloudy eye"))
                    .click();
            page.locator("#look button[type=submit]").last().click();
            assertThat(page.locator("#ate-fault").textContent()).contains("Say how they ate");
            assertThat(page.locator("#look-breaths-fault").textContent()).contains("Found “many”", "0 to 400");
            assertThat(page.locator("#look-breaths").inputValue()).isEqualTo("many");
            assertThat(page.locator("input[name=sign_cloudy_eye]").isChecked()).isTrue();
        }
    }

    @Test
    void movingEarlyIsAskedAboutOnceAndWritesIntoBothLogs() {
        try (Visit visit = chromium.visit(Screen.DESK_LIGHT)) {
            Page page = open(visit, BOX);
            page.locator("#move-count").fill("1");
            page.locator("button", new Page.LocatorOptions().setHasText("Move to Harbour room"))
                    .click();
            Locator question = page.locator(".move-asks");
            assertThat(question.textContent()).contains("a display cannot be treated");
            page.locator("button", new Page.LocatorOptions().setHasText("Move all the same"))
                    .click();
            page.waitForURL(Pattern.compile(".*/quarantine\\?kept=.*"));
            assertThat(page.locator("[role=status]").textContent()).isEqualTo("In the log: left 1 wrasse.");
            open(visit, "systems/harbour-room/log");
            assertThat(page.locator("table.log").first().textContent()).contains("arrived 1 wrasse");
        }
    }

    @Test
    void aFallowBeginsOnTheDisplaysPageAndRunsOnToday() {
        try (Visit visit = chromium.visit(Screen.PHONE_DARK)) {
            Page page = open(visit, "systems/harbour-room/quarantine");
            assertThat(page.locator("main").textContent()).contains("Quarantine box", "4 wrasse");
            page.locator("#fallow-parasite").selectOption("white_spot");
            page.locator("#fallow .choice label", new Page.LocatorOptions().setHasText("The last fish left"))
                    .click();
            page.locator("#fallow button[type=submit]").click();
            page.waitForURL(Pattern.compile(".*/quarantine\\?kept=.*"));
            assertThat(page.locator("[data-lead]").textContent())
                    .startsWith("Leave Harbour room without any fish until");
            visit.assertNothingSticksOut();
            visit.assertAccessible();
            open(visit, "systems/harbour-room/today");
            assertThat(page.locator(".counted-list").textContent())
                    .contains("Without fish, white spot", "day 1 of 76", "Quarantine box: 4 wrasse");
            visit.assertNothingWentWrong();
        }
    }

    @AfterEach
    void stop() {
        chromium.close();
        program.close();
    }
}
