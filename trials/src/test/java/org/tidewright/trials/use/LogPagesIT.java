package org.tidewright.trials.use;

import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.BoundingBox;
import java.util.regex.Pattern;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** Today, Water and Log as a keeper uses them, over the demo's invented log. */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class LogPagesIT {
    private static final String SYSTEM = "systems/harbour-room/";

    private final Program program = Program.demo();
    private final Chromium chromium = Chromium.start();

    @Test
    void aReadingIsInTheLogAfterTwoTapsOnAPhone() {
        try (Visit visit = chromium.visit(Screen.PHONE_LIGHT)) {
            Page page = open(visit, SYSTEM + "today?enter=calcium");
            page.locator("[data-more]").click();
            page.locator("#next-line button[type=submit]").click();
            page.waitForURL(Pattern.compile(".*/today\\?kept=.*"));
            assertThat(page.locator("[data-lead]").textContent()).startsWith("In the log. ");
            assertThat(page.locator("table.log").textContent()).contains("calcium");
            visit.assertNothingWentWrong();
        }
    }

    @Test
    void theReadingsAreSteppedThroughByKeyboard() {
        try (Visit visit = chromium.visit(Screen.DESK_LIGHT)) {
            Page page = open(visit, SYSTEM + "water/alkalinity");
            String newest = page.locator("[data-read-line]").textContent();
            page.locator("[data-readings]").focus();
            page.keyboard().press("ArrowLeft");
            String before = page.locator("[data-read-line]").textContent();
            assertThat(before).isNotEqualTo(newest).contains(": read ", " was to be expected.");
            page.keyboard().press("End");
            assertThat(page.locator("[data-read-line]").textContent()).isEqualTo(newest);
            visit.assertNothingWentWrong();
        }
    }

    @Test
    void otherDaysAreShownByKeyboardAndTheChartKeepsTheFocus() {
        try (Visit visit = chromium.visit(Screen.DESK_LIGHT)) {
            Page page = open(visit, SYSTEM + "water/temperature");
            page.locator("[data-readings]").focus();
            page.keyboard().press("+");
            page.waitForURL(Pattern.compile(".*/water/temperature\\?span=30d.*"));
            String days = page.locator("svg.readings-chart").getAttribute("aria-label");
            page.keyboard().press("PageUp");
            page.waitForURL(Pattern.compile(".*\\?from=.*"));
            assertThat(page.locator("svg.readings-chart").getAttribute("aria-label"))
                    .isNotEqualTo(days);
            page.keyboard().press("PageDown");
            page.waitForURL(Pattern.compile(".*\\?span=30d.*"));
            // The demo's log is shorter than the next wider span.
            page.keyboard().press("-");
            page.waitForURL(Pattern.compile(".*\\?span=all.*"));
            assertThat(page.evaluate("document.activeElement.id")).isEqualTo("readings");
            page.goBack();
            page.locator(".spans [aria-current]", new Page.LocatorOptions().setHasText("30 days"))
                    .waitFor();
            visit.assertNothingWentWrong();
        }
    }

    @Test
    void theDaysThatAreDrawnOverAreLookedAt() {
        try (Visit visit = chromium.visit(Screen.DESK_LIGHT)) {
            Page page = open(visit, SYSTEM + "water/alkalinity");
            page.locator("svg.readings-chart").scrollIntoViewIfNeeded();
            BoundingBox chart = page.locator("svg.readings-chart").boundingBox();
            page.mouse().move(chart.x + 0.5 * chart.width, chart.y + 60);
            page.mouse().down();
            page.mouse().move(chart.x + 0.7 * chart.width, chart.y + 60);
            page.mouse().up();
            page.waitForURL(Pattern.compile(".*\\?from=\\d{4}-\\d\\d-\\d\\d&to=\\d{4}-\\d\\d-\\d\\d.*"));
            assertThat(page.locator("svg.readings-chart .now").count()).isZero();
            visit.assertNothingWentWrong();
        }
    }

    @Test
    void readingsAndProbesAreToldInNumbersAndOtherDaysAreShownWithoutScript() {
        try (Visit visit = chromium.visitWithoutScript(Screen.PHONE_LIGHT)) {
            Page page = open(visit, SYSTEM + "water/ph");
            assertThat(page.locator("svg.readings-chart .dot .mark").first().isVisible())
                    .isTrue();
            page.locator(".spans a", new Page.LocatorOptions().setHasText("30 days"))
                    .click();
            page.waitForURL(Pattern.compile(".*/water/ph\\?span=30d.*"));
            assertThat(page.locator(".tables").textContent()).contains("the probe “sump, invented”", "Least", "Most");
            page.locator("#from").fill("2020-01-01");
            page.locator("#to").fill("2019-01-01");
            page.locator(".own-days button").click();
            assertThat(page.locator("#to-fault").textContent()).contains("expected 1 January 2020 or later");
            assertThat(page.locator("#from").inputValue()).isEqualTo("2020-01-01");
        }
    }

    @Test
    void aDoseThatWasMovedIsToBeLeftAloneUntilADay() {
        try (Visit visit = chromium.visit(Screen.DESK_LIGHT)) {
            Page page = open(visit, SYSTEM + "water/alkalinity");
            assertThat(page.locator("svg.readings-chart .dot.aside").count()).isEqualTo(1);
            page.locator(".quantities a", new Page.LocatorOptions().setHasText("Calcium"))
                    .click();
            page.waitForURL(Pattern.compile(".*/water/calcium"));
            assertThat(page.locator("[data-lead]").textContent()).startsWith("Leave the dose of calcium alone until ");
            assertThat(page.locator("svg.readings-chart .settles").count()).isEqualTo(1);
            page.locator(".quantities a", new Page.LocatorOptions().setHasText("Nitrate"))
                    .click();
            page.waitForURL(Pattern.compile(".*/water/nitrate"));
            assertThat(page.locator("h1").textContent()).isEqualTo("Nitrate");
            visit.assertNothingWentWrong();
        }
    }

    @Test
    void aLineIsWrittenCorrectedAndTakenBackWithoutScript() {
        try (Visit visit = chromium.visitWithoutScript(Screen.DESK_LIGHT)) {
            Page page = open(visit, SYSTEM + "log");
            page.locator("#line-text").fill("changed 40");
            page.locator("button[type=submit]").click();
            assertThat(page.locator("#line-fault").textContent()).contains("without a unit");
            page.locator("#line-text").fill("changed 40 L");
            page.locator("button[type=submit]").click();
            page.waitForURL(Pattern.compile(".*/log\\?kept=.*"));
            page.locator("table.log a", new Page.LocatorOptions().setHasText("changed 40 L"))
                    .first()
                    .click();
            page.locator("#line-text").fill("changed 45 L");
            page.locator("button", new Page.LocatorOptions().setHasText("Correct the line"))
                    .click();
            page.waitForURL(Pattern.compile(".*/log\\?kept=.*"));
            page.locator("table.log a", new Page.LocatorOptions().setHasText("changed 45 L"))
                    .first()
                    .click();
            assertThat(page.locator("table.log").textContent()).contains("changed 40 L", "changed 45 L");
            page.locator("button", new Page.LocatorOptions().setHasText("Take the line back"))
                    .click();
            page.waitForURL(Pattern.compile(".*/log\\?kept=.*"));
            assertThat(page.locator("[data-lead]").textContent()).startsWith("Taken back: ");
        }
    }

    @ParameterizedTest
    @EnumSource(Screen.class)
    void nothingIsWrongOnAnyScreen(Screen screen) {
        for (String path : new String[] {
            "today", "water", "water/phosphate", "water/temperature?span=all", "water/ph?span=30d", "log"
        }) {
            try (Visit visit = chromium.visit(screen)) {
                open(visit, SYSTEM + path);
                visit.assertNothingWentWrong();
                visit.assertAccessible();
                visit.assertNothingSticksOut();
            }
        }
    }

    private Page open(Visit visit, String path) {
        visit.open(program.address().resolve(path));
        return visit.page();
    }

    @AfterAll
    void close() {
        chromium.close();
        program.close();
    }
}
