package org.tidewright.trials.use;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.PlaywrightException;
import java.util.List;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** The page “At the shop” as a keeper uses it, also after the program is out of reach. */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class ShopPageIT {
    private static final String SHOP = "systems/harbour-room/shop";

    private final Program program = Program.demo();
    private final Chromium chromium = Chromium.start();

    private static Page open(Visit visit, Program program, String path) {
        visit.open(program.address().resolve(path));
        return visit.page();
    }

    /** Opens it and waits until the list is there and what can be kept is kept. */
    private static Page opened(Visit visit, Program program, String said) {
        Page page = open(visit, program, SHOP);
        page.locator("[data-say=" + said + "]").waitFor();
        return page;
    }

    private static Locator sign(Page page, String id) {
        return page.locator("input[value=" + id + "]");
    }

    @Test
    void worksOnWithoutTheProgramAfterItWasOpenedOnce() {
        try (Visit visit = chromium.visit(Screen.PHONE_LIGHT)) {
            Page page = visit.page();
            String verdict;
            try (Program away = Program.demo()) {
                opened(visit, away, "kept");
                assertThat(page.locator("[data-offline]").isVisible()).isFalse();
                page.locator("#look").fill("achilles");
                verdict = page.locator("details[open] .lead").textContent();
                assertThat(verdict).startsWith("No: It grows to");
                sign(page, "fish_refuses").check();
                visit.assertNothingWentWrong();
            }
            page.reload();
            page.locator("[data-offline]").waitFor();
            assertThat(page.locator("[data-offline]").textContent()).matches("Offline: as of \\d\\d:\\d\\d today\\.");
            assertThat(page.locator("#look").inputValue()).isEqualTo("achilles");
            assertThat(page.locator("details[open] .lead").textContent()).isEqualTo(verdict);
            assertThat(page.locator("[data-tally]").textContent()).isEqualTo("Leave it: it does not eat.");
            assertThat(page.locator("details[open] .whole").isVisible()).isFalse();

            page.locator("#look").fill("gramma lor");
            assertThat(page.locator("details[open] summary").textContent()).contains("Gramma loreto");
            assertThat(page.locator("details[open] .lead").textContent()).startsWith("Not yet: ");
            visit.assertNothingSticksOut();
            visit.assertAccessible();
        }
    }

    @Test
    void noOtherPageIsAnsweredFromWhatIsKept() {
        try (Visit visit = chromium.visit(Screen.PHONE_LIGHT)) {
            Page page = visit.page();
            try (Program away = Program.demo()) {
                opened(visit, away, "kept");
                open(visit, away, "systems/harbour-room/life");
            }
            assertThatThrownBy(page::reload)
                    .isInstanceOf(PlaywrightException.class)
                    .hasMessageContaining("ERR_CONNECTION_REFUSED");
        }
    }

    @Test
    void signsAreTickedByKeyboardAndAddUpToOneSentence() {
        try (Visit visit = chromium.visit(Screen.PHONE_DARK)) {
            Page page = opened(visit, program, "kept");
            assertThat(page.locator("[data-tally]").textContent()).startsWith("No bad sign ticked");
            visit.tabTo("input[value=fish_breathes_fast]");
            page.keyboard().press("Space");
            visit.tabTo("input[value=fish_refuses]");
            page.keyboard().press("Space");
            assertThat(page.locator("[data-tally]").textContent())
                    .isEqualTo("Leave it: it breathes fast and does not eat.");
            assertThat(page.locator(".means:visible").allTextContents())
                    .hasSize(2)
                    .allMatch(means -> means.startsWith("Leave it."));
            visit.tabTo("[data-next]");
            page.keyboard().press("Enter");
            assertThat(page.locator("[data-tally]").textContent()).startsWith("No bad sign ticked");
            assertThat(page.evaluate("document.activeElement.id")).isEqualTo("look");
            page.keyboard().type("hystrix");
            assertThat(page.locator("[data-count]").textContent()).isEqualTo("1 shown.");
            assertThat(page.locator("#lever-kind-coral").isChecked()).isTrue();
            assertThat(page.locator(".of-fish").isVisible()).isFalse();
            assertThat(page.locator(".of-coral").isVisible()).isTrue();
            visit.assertNothingWentWrong();
            visit.assertAccessible();
        }
    }

    @Test
    void saysTheSameWithoutScript() {
        try (Visit with = chromium.visit(Screen.PHONE_LIGHT);
                Visit without = chromium.visitWithoutScript(Screen.PHONE_LIGHT)) {
            Page quick = opened(with, program, "kept");
            Page plain = without.page();
            for (String look :
                    List.of("tang", "Yéllow-TANG", "zeb fl", "clownfihs", "coral", "qqqqqq", "o", "bird’s")) {
                quick.locator("#look").fill(look);
                open(without, program, SHOP);
                plain.locator("#look").fill(look);
                plain.locator(".shop-ask button").click();
                for (String part :
                        List.of("summary", ".lead", ".shop-animal .reasons li", ".caution", ".whole", ".note")) {
                    String within = part.equals(".note") ? "[data-note]" : "[data-found] " + part;
                    assertThat(quick.locator(within).allTextContents().stream()
                                    .map(String::strip)
                                    .toList())
                            .as("%s of “%s”", part, look)
                            .isEqualTo(plain.locator(within).allTextContents().stream()
                                    .map(String::strip)
                                    .toList());
                }
            }
            String seen = "?kind=fish";
            for (String id : List.of(
                    "fish_new",
                    "fish_only_live",
                    "fish_sick_neighbours",
                    "fish_refuses",
                    "fish_thin",
                    "fish_sores",
                    "fish_dusty")) {
                sign(quick, id).check();
                seen += "&seen=" + id;
                open(without, program, SHOP + seen);
                assertThat(quick.locator("[data-tally]").textContent())
                        .as(seen)
                        .isEqualTo(plain.locator("[data-tally]").textContent());
            }
        }
    }

    @Test
    void saysWhereTheBrowserCannotKeepThePageAndLooksUpAllTheSame() {
        try (Visit visit = chromium.visit(Screen.PHONE_LIGHT)) {
            Page page = visit.page();
            // What a browser says of plain http at any other name than this machine's own.
            page.addInitScript("Object.defineProperty(window, 'isSecureContext', { value: false });"
                    + "Object.defineProperty(navigator, 'serviceWorker', { value: undefined });");
            try (Program away = Program.demo()) {
                opened(visit, away, "open");
                assertThat(page.locator("[data-say=open]").textContent()).contains("plain http", "Leave it open");
            }
            page.locator("#look").fill("achilles");
            assertThat(page.locator("details[open] .lead").textContent()).startsWith("No: ");
        }
    }

    @ParameterizedTest
    @EnumSource
    void staysReadableWithEverythingTicked(Screen screen) {
        try (Visit visit = chromium.visit(screen)) {
            Page page = opened(visit, program, "kept");
            for (String kind : List.of("fish", "coral", "other")) {
                page.locator("#lever-kind-" + kind).check();
                page.evaluate(
                        "kind => document.querySelectorAll(`.of-${kind} input`).forEach(box => box.click())", kind);
                assertThat(page.locator(".means:visible").count()).isGreaterThan(15);
                visit.assertNothingSticksOut();
            }
            page.locator("#look").fill("ta");
            visit.unfoldAll();
            visit.assertNothingSticksOut();
            visit.assertAccessible();
            visit.assertNothingWentWrong();
        }
    }

    @AfterAll
    void stop() {
        chromium.close();
        program.close();
    }
}
