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

/** The water desk as a keeper uses it. */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class WaterDeskPageIT {
    private static final String PAGE = "water-desk";

    private final Program program = Program.demo();
    private final Chromium chromium = Chromium.start();

    @Test
    void theSentenceFollowsWhatIsTypedAndTheAddressCanBeKept() {
        try (Visit visit = chromium.visit(Screen.PHONE_LIGHT)) {
            Page page = open(visit, PAGE);
            assertThat(page.locator("#lead").textContent()).startsWith("Do not dose to raise this pH");
            page.locator("#ph").fill("8.45");
            page.waitForCondition(
                    () -> page.locator("#lead").textContent().startsWith("Add nothing to bring this pH down"));
            assertThat(page.locator("svg.air-chart").getAttribute("aria-label")).contains("Your water reads 8.45");
            assertThat(page.evaluate("document.activeElement.id")).isEqualTo("ph");
            assertThat(page.url()).contains("ph=8.45");
            String lead = page.locator("#lead").textContent();
            page.reload();
            assertThat(page.locator("#lead").textContent()).isEqualTo(lead);
            visit.assertNothingWentWrong();
        }
    }

    @Test
    void emptiedFieldsStayEmpty() {
        try (Visit visit = chromium.visit(Screen.DESK_LIGHT)) {
            Page page = open(visit, PAGE);
            for (Locator field : page.locator("form.amounts fieldset input").all()) {
                field.fill("");
            }
            page.waitForCondition(
                    () -> page.locator("#lead").textContent().startsWith("Type temperature and salinity first"));
            page.reload();
            assertThat(page.locator("#temperature").inputValue()).isEmpty();
        }
    }

    @Test
    void worksWithoutScript() {
        try (Visit visit = chromium.visitWithoutScript(Screen.DESK_LIGHT)) {
            Page page = open(visit, PAGE);
            page.locator("#alkalinity").fill("2.5");
            page.locator("[name=alkalinity_unit]").selectOption("meq/L");
            page.locator("button[type=submit]").click();
            page.waitForURL(Pattern.compile(".*alkalinity=2\\.5&alkalinity_unit=meq.*"));
            assertThat(page.locator(".heads").textContent()).contains("7.0dKH");
            assertThat(page.locator("#alkalinity").inputValue()).isEqualTo("2.5");
        }
    }

    @Test
    void theWholeDeskIsUsedByKeyboardAlone() {
        try (Visit visit = chromium.visit(Screen.DESK_LIGHT)) {
            Page page = open(visit, PAGE);
            visit.tabTo("#alkalinity");
            page.keyboard().press("Control+A");
            page.keyboard().type("10");
            page.keyboard().press("Enter");
            page.waitForCondition(() -> page.locator("#lead").textContent().contains("10.0"));
            visit.tabTo("[name=ph_unit]");
            page.keyboard().press("ArrowUp");
            page.waitForURL(Pattern.compile(".*&ph=8\\.0&ph_unit=$"));
            visit.tabTo(".more summary");
            page.keyboard().press("Enter");
            visit.tabTo("#boron");
            visit.tabTo("#curves-table summary");
            page.keyboard().press("Enter");
            assertThat(page.locator("#curves-table tbody tr").first().isVisible())
                    .isTrue();
            visit.tabTo("#sheet-constants summary");
            page.keyboard().press("Enter");
            assertThat(page.locator("#sheet-constants").textContent()).contains("Lueker et al. 2000");
            visit.assertNothingWentWrong();
        }
    }

    @ParameterizedTest
    @EnumSource
    void staysReadableWithAllUnfoldedAndWithFaults(Screen screen) {
        try (Visit visit = chromium.visit(screen)) {
            Page page = open(visit, PAGE);
            page.evaluate("document.querySelectorAll('details').forEach(d => { d.open = true; })");
            visit.assertNothingSticksOut();
            visit.assertAccessible();
            visit.open(program.address().resolve(PAGE + "?temperature=warm&salinity=35&alkalinity=8"));
            visit.assertNothingSticksOut();
            visit.assertAccessible();
        }
    }

    @Test
    void aFaultStandsAtItsFieldWhileTypingAndLeavesWithIt() {
        try (Visit visit = chromium.visit(Screen.DESK_DARK)) {
            Page page = open(visit, PAGE);
            Locator field = page.locator("#salinity");
            field.fill("salty");
            page.waitForCondition(() -> "true".equals(field.getAttribute("aria-invalid")));
            assertThat(field.getAttribute("aria-describedby")).isEqualTo("salinity-fault");
            assertThat(page.locator("#salinity-fault").textContent()).contains("Found “salty”");
            assertThat(field.inputValue()).isEqualTo("salty");
            assertThat(page.locator("svg.air-chart").count()).isZero();
            field.fill("34");
            page.waitForCondition(() -> field.getAttribute("aria-invalid") == null);
            assertThat(page.locator("#salinity-fault").isVisible()).isFalse();
            assertThat(page.locator("svg.air-chart").count()).isEqualTo(1);
        }
    }

    @Test
    void isReachedFromASystemsPageOnAPhone() {
        try (Visit visit = chromium.visit(Screen.PHONE_DARK)) {
            Page page = open(visit, "systems/harbour-room/build");
            page.locator(".foot-index a", new Page.LocatorOptions().setHasText("Water desk"))
                    .click();
            page.waitForURL(Pattern.compile(".*/water-desk"));
            visit.assertNothingWentWrong();
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
