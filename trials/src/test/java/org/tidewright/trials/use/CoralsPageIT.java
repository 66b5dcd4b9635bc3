package org.tidewright.trials.use;

import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Page;
import java.util.regex.Pattern;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** The page Corals as a keeper uses it. */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class CoralsPageIT {
    private static final String CORALS = "systems/harbour-room/corals";

    private final Program program = Program.demo();
    private final Chromium chromium = Chromium.start();

    @Test
    void aPlaceIsTriedWithoutLeavingIt() {
        try (Visit visit = chromium.visit(Screen.PHONE_LIGHT)) {
            Page page = open(visit, CORALS);
            assertThat(page.locator("#lead").textContent()).startsWith("Move the ");
            page.locator("#lever-coral").selectOption("Montipora digitata");
            page.locator("#lever-across").fill("8");
            page.locator("#lever-x").fill("25");
            page.locator("#lever-y").fill("34");
            page.locator("#lever-height").fill("12");
            page.locator("#lever-go").click();
            page.waitForURL(Pattern.compile(".*height=12.*#try"));
            page.waitForCondition(() -> page.locator("#tried-lead").count() == 1);
            assertThat(page.locator("#tried-lead").textContent()).startsWith("Do not put it there");
            assertThat(page.locator("svg .colony.tried").count()).isEqualTo(2);
            page.getByText("Try this place").first().click();
            page.waitForCondition(
                    () -> page.locator("#tried-lead").textContent().startsWith("Put it there"));
        }
    }

    @Test
    void worksWithoutScript() {
        try (Visit visit = chromium.visitWithoutScript(Screen.PHONE_DARK)) {
            Page page = open(visit, CORALS);
            page.locator("#lever-coral").selectOption("plating_montipora");
            page.locator("#lever-across").fill("8");
            page.locator("#lever-go").click();
            page.waitForURL(Pattern.compile(".*across=8.*"));
            assertThat(page.locator("#tried-lead").textContent()).startsWith("Look whether rock or sand is there");
            assertThat(page.locator("#tried .steps li").count()).isEqualTo(3);
        }
    }

    @Test
    void isUsedByKeyboardAlone() {
        try (Visit visit = chromium.visit(Screen.DESK_LIGHT)) {
            Page page = open(visit, CORALS + "?coral=own-6");
            visit.tabTo("#lever-x");
            page.keyboard().type("18 cm");
            page.keyboard().press("Tab");
            visit.tabTo("#lever-y");
            page.keyboard().type("44 cm");
            page.keyboard().press("Tab");
            visit.tabTo("#lever-height");
            page.keyboard().type("8 cm");
            page.keyboard().press("Enter");
            page.waitForURL(Pattern.compile(".*height=8.*"));
            page.waitForCondition(() -> page.locator("#tried-lead").count() == 1);
            assertThat(page.locator("#tried").textContent()).contains("Neighbours:");
        }
    }

    @ParameterizedTest
    @EnumSource
    void staysReadable(Screen screen) {
        try (Visit visit = chromium.visit(screen)) {
            for (String path : new String[] {
                CORALS,
                CORALS + "?coral=euphyllia&across=8&x=25&y=34&height=12",
                CORALS + "?coral=plating_montipora&across=8",
                CORALS + "?coral=euphyllia&across=wide&x=9+m",
                "systems/window-nano/corals",
                "systems/fifty-five-gallon/corals"
            }) {
                open(visit, path);
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
