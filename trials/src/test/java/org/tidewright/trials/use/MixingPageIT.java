package org.tidewright.trials.use;

import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import java.util.regex.Pattern;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** The mixing desk as a keeper uses it. */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class MixingPageIT {
    private static final String DESK = "systems/harbour-room/mixing";

    private final Program program = Program.demo();
    private final Chromium chromium = Chromium.start();

    @Test
    void theSentenceFollowsWhatIsTypedAndTheAddressCanBeKept() {
        try (Visit visit = chromium.visit(Screen.PHONE_LIGHT)) {
            Page page = open(visit, DESK);
            assertThat(page.locator("#lead").textContent()).startsWith("Go ahead with 45");
            assertThat(page.locator("#system_alkalinity-note").textContent()).contains("From your log");
            page.locator("#volume").fill("200");
            page.locator("#new_alkalinity").fill("12");
            page.waitForCondition(
                    () -> page.locator("#new_alkalinity-note").textContent().contains("Typed. From your plan: 8.2"));
            assertThat(page.locator("#lead").textContent())
                    .startsWith("Split it into")
                    .contains("raise the alkalinity");
            assertThat(page.evaluate("document.activeElement.id")).isEqualTo("new_alkalinity");
            assertThat(page.url()).contains("new_alkalinity=12");
            String lead = page.locator("#lead").textContent();
            page.reload();
            assertThat(page.locator("#lead").textContent()).isEqualTo(lead);
            visit.assertNothingWentWrong();
        }
    }

    @Test
    void aWaterThatIsEmptiedIsUnknownAndStaysSo() {
        try (Visit visit = chromium.visit(Screen.DESK_LIGHT)) {
            Page page = open(visit, DESK);
            page.locator("#new_nitrate").fill("");
            page.waitForCondition(() -> page.locator("#results")
                    .textContent()
                    .contains("Not known of both waters and so not of the mixture: nitrate."));
            page.reload();
            assertThat(page.locator("#new_nitrate").inputValue()).isEmpty();
        }
    }

    @Test
    void worksWithoutScript() {
        try (Visit visit = chromium.visitWithoutScript(Screen.DESK_LIGHT)) {
            Page page = open(visit, DESK);
            page.locator(".kinds a", new Page.LocatorOptions().setHasText("Salt"))
                    .click();
            page.waitForURL(Pattern.compile(".*task=salt"));
            page.locator("#volume").fill("100");
            page.locator("#temperature").fill("25");
            page.locator("button[type=submit]").click();
            page.waitForURL(Pattern.compile(".*volume=100.*"));
            assertThat(page.locator("#lead").textContent().replace("\u202f", ""))
                    .startsWith("Weigh 3998");
            page.locator(".deeds a").click();
            page.waitForURL(Pattern.compile(".*mixing\\?task=salt"));
            assertThat(page.locator("#volume").inputValue()).isEqualTo("45");
        }
    }

    @Test
    void aFaultStandsAtItsFieldWhileTypingAndLeavesWithIt() {
        try (Visit visit = chromium.visit(Screen.DESK_DARK)) {
            Page page = open(visit, DESK + "?task=reserve");
            Locator field = page.locator("#days");
            field.fill("two");
            page.waitForCondition(() -> "true".equals(field.getAttribute("aria-invalid")));
            assertThat(page.locator("#days-fault").textContent()).contains("Found “two”");
            assertThat(page.locator("table.answers").count()).isZero();
            field.fill("10");
            page.waitForCondition(() -> field.getAttribute("aria-invalid") == null);
            assertThat(page.locator("#days-fault").isVisible()).isFalse();
            assertThat(page.locator("#lead").textContent()).contains("top-off for 10");
        }
    }

    @Test
    void theDeskIsUsedByKeyboardAlone() {
        try (Visit visit = chromium.visit(Screen.DESK_LIGHT)) {
            Page page = open(visit, DESK + "?task=heating");
            assertThat(page.locator("#lead").textContent())
                    .isEqualTo("Type what neither your log nor your plan tells: power of the heater.");
            visit.tabTo("#power");
            page.keyboard().type("300");
            page.keyboard().press("Enter");
            page.waitForCondition(() -> page.locator("#lead").textContent().startsWith("Switch the heater on"));
            visit.tabTo("#lever-lid-on");
            page.keyboard().press("ArrowRight");
            page.waitForURL(Pattern.compile(".*lid=off.*"));
            visit.tabTo("#working summary");
            page.keyboard().press("Enter");
            assertThat(page.locator(".working li").first().isVisible()).isTrue();
            visit.assertNothingWentWrong();
        }
    }

    @ParameterizedTest
    @EnumSource
    void everyQuestionStaysReadableWithAllUnfoldedAndWithFaults(Screen screen) {
        try (Visit visit = chromium.visit(screen)) {
            for (String query : new String[] {
                "task=change&volume=200&new_alkalinity=12&new_temperature=10",
                "task=series&target=3",
                "task=salt&made_mass=x",
                "task=salinity&now=33&strong=40",
                "task=temperature",
                "task=heating&power=300",
                "task=reserve&units=us"
            }) {
                open(visit, DESK + "?" + query);
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

    @AfterAll
    void stop() {
        chromium.close();
        program.close();
    }
}
