package org.tidewright.trials.use;

import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Page;
import java.util.regex.Pattern;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** The new tank's page and the day's page as a keeper uses them. */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class StudyPagesIT {
    private static final String NEW_TANK = "systems/harbour-room/new-tank";
    private static final String DAY = "systems/harbour-room/day";

    private final Program program = Program.demo();
    private final Chromium chromium = Chromium.start();

    @Test
    void choosingNothingToSeedWithPutsTheDayOff() {
        try (Visit visit = chromium.visit(Screen.PHONE_LIGHT)) {
            Page page = open(visit, NEW_TANK);
            int seeded = readyDay(page);
            page.locator("label", new Page.LocatorOptions().setHasText("nothing"))
                    .click();
            page.waitForURL(Pattern.compile(".*seed=none.*"));
            page.waitForCondition(() -> readyDay(page) != seeded);
            assertThat(readyDay(page)).isGreaterThan(seeded);
            assertThat(page.evaluate("document.activeElement.id")).isEqualTo("lever-seed-none");
            String lead = page.locator("#lead").textContent();
            page.reload();
            assertThat(page.locator("#lead").textContent()).isEqualTo(lead);
            visit.assertNothingWentWrong();
        }
    }

    @Test
    void aFirstFishIsWarnedAboutWithoutScript() {
        try (Visit visit = chromium.visitWithoutScript(Screen.DESK_LIGHT)) {
            Page page = open(visit, "systems/fifty-five-gallon/new-tank");
            page.locator("#lever-seed-none").check();
            page.locator("#lever-begin-fish").check();
            page.locator("#lever-go").click();
            page.waitForURL(Pattern.compile(".*begin=fish.*"));
            assertThat(page.locator("#lead").textContent()).startsWith("Do not begin with a fish");
            assertThat(page.locator(".stockings td.no").count()).isPositive();
            assertThat(page.locator("details:has-text('Show as table') table").count())
                    .isEqualTo(5);
        }
    }

    @Test
    void anOpenWindowIsTriedAndComparedWithThePlan() {
        try (Visit visit = chromium.visit(Screen.DESK_LIGHT)) {
            Page page = open(visit, DAY);
            assertThat(page.locator("#lead").textContent()).startsWith("Open a window in the evening");
            assertThat(page.locator("path.beside").count()).isZero();
            page.locator("label", new Page.LocatorOptions().setHasText("open all day"))
                    .click();
            page.waitForCondition(() -> page.locator("#lead").textContent().startsWith("Do it: with a window open"));
            assertThat(page.locator("path.beside").count()).isEqualTo(5);
            assertThat(page.url()).contains("window=always");
            visit.assertNothingWentWrong();
        }
    }

    @Test
    void theDaysFormWorksWithoutScript() {
        try (Visit visit = chromium.visitWithoutScript(Screen.PHONE_DARK)) {
            Page page = open(visit, DAY);
            page.locator("#lever-lime-none").check();
            page.locator("#lever-lights_start").fill("09:00");
            page.locator("#lever-go").click();
            page.waitForURL(Pattern.compile(".*lime=none.*"));
            assertThat(page.locator("#lead").textContent())
                    .contains("bicarbonate in place of limewater")
                    .contains("lights from 09:00 for 9 hours");
            assertThat(page.locator("#lever-lights_start").inputValue()).isEqualTo("09:00");
        }
    }

    @Test
    void bothPagesAreUsedByKeyboardAlone() {
        try (Visit visit = chromium.visit(Screen.DESK_LIGHT)) {
            Page page = open(visit, DAY);
            visit.tabTo("#lever-window-shut");
            page.keyboard().press("ArrowRight");
            page.waitForURL(Pattern.compile(".*window=evening.*"));
            page.waitForCondition(() -> page.locator("#lead").textContent().startsWith("Do it"));
            visit.tabTo("#table-ph summary");
            page.keyboard().press("Enter");
            assertThat(page.locator("#table-ph tbody tr").first().isVisible()).isTrue();
            open(visit, NEW_TANK);
            visit.tabTo("#lever-fish");
            page.keyboard().press("Control+A");
            page.keyboard().type("6");
            page.keyboard().press("Enter");
            page.waitForURL(Pattern.compile(".*fish=6.*"));
            page.waitForCondition(() -> page.locator(".stockings").textContent().contains("All 6 at once"));
            visit.assertNothingWentWrong();
        }
    }

    @Test
    void aTableThatWasUnfoldedStaysSo() {
        try (Visit visit = chromium.visit(Screen.DESK_DARK)) {
            Page page = open(visit, DAY);
            page.locator("#table-oxygen summary").click();
            page.locator("label", new Page.LocatorOptions().setHasText("open all day"))
                    .click();
            page.waitForCondition(() -> page.locator("path.beside").count() == 5);
            assertThat(page.locator("#table-oxygen tbody tr").first().isVisible())
                    .isTrue();
        }
    }

    @ParameterizedTest
    @EnumSource
    void staysReadableWithAllUnfolded(Screen screen) {
        try (Visit visit = chromium.visit(screen)) {
            for (String path : new String[] {NEW_TANK + "?fish=99", DAY + "?window=always&lights_start=late"}) {
                open(visit, path);
                visit.unfoldAll();
                visit.assertNothingSticksOut();
                visit.assertAccessible();
            }
        }
    }

    private Page open(Visit visit, String path) {
        visit.open(program.address().resolve(path));
        return visit.page();
    }

    private static int readyDay(Page page) {
        String lead = page.locator("#lead").textContent().replace('\u00a0', ' ');
        return Integer.parseInt(lead.replaceFirst("^Add the first animals on day (\\d+),.*$", "$1"));
    }

    @AfterAll
    void stop() {
        chromium.close();
        program.close();
    }
}
