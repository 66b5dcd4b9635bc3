package org.tidewright.trials.use;

import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Page;
import java.util.regex.Pattern;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;

/** The wish list as a keeper uses it, over the demo's invented one. The tests change it, so each begins from a demo of its own. */
class ArrivalsPageIT {
    private static final String ARRIVALS = "systems/harbour-room/arrivals";

    private final Program program = Program.demo();
    private final Chromium chromium = Chromium.start();

    private Page open(Visit visit, String path) {
        visit.open(program.address().resolve(path));
        return visit.page();
    }

    @Test
    void theListIsPlannedAndItsDaysAreKeptOnAPhone() {
        try (Visit visit = chromium.visit(Screen.PHONE_LIGHT)) {
            Page page = open(visit, ARRIVALS);
            assertThat(page.locator("[data-lead]").textContent()).startsWith("Buy ");
            assertThat(page.locator("svg.arrivals .home").count()).isGreaterThan(3);
            visit.assertNothingSticksOut();
            page.locator("button", new Page.LocatorOptions().setHasText("Keep these dates"))
                    .click();
            page.waitForURL(Pattern.compile(".*/arrivals\\?kept=days"));
            assertThat(page.locator("[role=status]").textContent()).isEqualTo("These days are kept.");
            visit.assertNothingWentWrong();
            visit.assertAccessible();
        }
    }

    @Test
    void aLineIsAddedByKeyboardAndADelayMovesItsDays() {
        try (Visit visit = chromium.visit(Screen.DESK_DARK)) {
            Page page = open(visit, ARRIVALS);
            page.locator("#wish-list").fill("yellow assessor price 65");
            page.locator("#wish-budget").focus();
            page.keyboard().press("Enter");
            page.waitForURL(Pattern.compile(".*/arrivals\\?kept=list"));
            page.locator("button", new Page.LocatorOptions().setHasText("Keep these dates"))
                    .click();
            page.waitForURL(Pattern.compile(".*/arrivals\\?kept=days"));
            page.locator("#wish-list").fill("yellow assessor price 65 from 2199-01-01");
            page.locator("#wishes button[type=submit]").click();
            page.waitForURL(Pattern.compile(".*/arrivals\\?kept=list"));
            assertThat(page.locator("main").textContent()).contains("later than this plan looks ahead");
            visit.assertNothingWentWrong();
            visit.assertAccessible();
        }
    }

    @Test
    void whatIsMistypedStandsWithItsFaultWithoutScript() {
        try (Visit visit = chromium.visitWithoutScript(Screen.PHONE_LIGHT)) {
            Page page = open(visit, ARRIVALS);
            page.locator("#wish-list").fill("yelow tang");
            page.locator("#wishes button[type=submit]").click();
            assertThat(page.locator("#wish-list-fault").textContent())
                    .contains("Line 1: found “yelow tang”", "Did you mean “yellow tang”?");
            assertThat(page.locator("#wish-list").inputValue()).isEqualTo("yelow tang");
        }
    }

    @AfterEach
    void stop() {
        chromium.close();
        program.close();
    }
}
