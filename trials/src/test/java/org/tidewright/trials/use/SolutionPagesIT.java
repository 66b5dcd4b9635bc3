package org.tidewright.trials.use;

import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Page;
import java.util.regex.Pattern;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** The pages Solutions and pH as a keeper uses them. */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class SolutionPagesIT {
    private static final String SOLUTIONS = "systems/harbour-room/solutions";
    private static final String PH = "systems/harbour-room/ph";

    private final Program program = Program.demo();
    private final Chromium chromium = Chromium.start();

    /** 40 g/L of lye, 97 % of the bag: 41.2 g in a litre. */
    @Test
    void anotherSaltIsWeighedWithItsOwnCaution() {
        try (Visit visit = chromium.visit(Screen.PHONE_LIGHT)) {
            Page page = open(visit, SOLUTIONS);
            assertThat(lead(page)).startsWith("Weigh 162 g of sodium bicarbonate and fill up to 2 L");
            page.locator("#lever-for").focus();
            page.locator("#lever-for").selectOption("lye");
            page.waitForURL(Pattern.compile(".*for=lye.*"));
            page.waitForCondition(() -> lead(page).contains("sodium hydroxide"));
            assertThat(page.locator("#lead .caution").textContent()).contains("goggles", "lye blinds");
            assertThat(page.evaluate("document.activeElement.id")).isEqualTo("lever-for");
            String told = lead(page);
            page.reload();
            assertThat(lead(page)).isEqualTo(told);
            visit.assertNothingWentWrong();
        }
    }

    @Test
    void aBottleIsToldFromItsRiseWithoutScript() {
        try (Visit visit = chromium.visitWithoutScript(Screen.PHONE_DARK)) {
            Page page = open(visit, SOLUTIONS);
            page.locator("nav a:has-text('What is in a bottle')").click();
            assertThat(lead(page)).startsWith("Dose once, test before");
            page.locator("#lever-before").fill("7,4");
            page.locator("#lever-after").fill("8.2");
            page.locator("#lever-dose").fill("40");
            page.locator("#lever-water").fill("150");
            page.locator("#lever-go").click();
            page.waitForURL(Pattern.compile(".*dose=40.*"));
            assertThat(lead(page)).startsWith("Count on 1.1 ±");
            assertThat(page.locator("#lever-before").inputValue()).isEqualTo("7.4");
        }
    }

    @Test
    void whatIsTypedWrongStaysWithItsFaultBesideIt() {
        try (Visit visit = chromium.visitWithoutScript(Screen.DESK_LIGHT)) {
            Page page = open(visit, SOLUTIONS + "?ask=year");
            page.locator("#lever-every").fill("fortnight");
            page.locator("#lever-go").click();
            page.waitForURL(Pattern.compile(".*every=fortnight.*"));
            assertThat(page.locator("#lever-every").inputValue()).isEqualTo("fortnight");
            assertThat(page.locator("#every-fault").textContent()).startsWith("Found “fortnight”");
            assertThat(page.locator("#lever-every").getAttribute("aria-describedby"))
                    .isEqualTo("every-fault");
        }
    }

    @Test
    void bothPagesAreUsedByKeyboardAlone() {
        try (Visit visit = chromium.visit(Screen.DESK_LIGHT)) {
            Page page = open(visit, SOLUTIONS);
            visit.tabTo("#lever-volume");
            page.keyboard().press("Control+A");
            page.keyboard().type("1 gal");
            page.keyboard().press("Enter");
            page.waitForURL(Pattern.compile(".*volume=1.*gal.*"));
            page.waitForCondition(() -> lead(page).contains("306 g"));
            open(visit, PH);
            visit.tabTo("#lever-ph");
            page.keyboard().press("Control+A");
            page.keyboard().type("7.6");
            page.keyboard().press("Enter");
            page.waitForURL(Pattern.compile(".*ph=7.6.*"));
            page.waitForCondition(() -> lead(page).startsWith("Move more air over the water"));
            visit.assertNothingWentWrong();
        }
    }

    @Test
    void theTwoCupsTellWhereItComesFrom() {
        try (Visit visit = chromium.visit(Screen.PHONE_LIGHT)) {
            Page page = open(visit, PH);
            assertThat(page.locator("#cups-told").count()).isZero();
            page.locator("#lever-cup_tank").fill("8.00");
            page.locator("#lever-cup_outdoors").fill("8.20");
            page.locator("#lever-cup_room").fill("8.03");
            page.locator("#cups-go").click();
            page.waitForURL(Pattern.compile(".*cup_room=8.03.*"));
            page.waitForCondition(() -> page.locator("#cups-told").count() == 1);
            assertThat(page.locator("#cups-told").textContent()).startsWith("Air the room");
            visit.assertNothingWentWrong();
        }
    }

    @ParameterizedTest
    @EnumSource
    void staysReadableWithAllUnfolded(Screen screen) {
        try (Visit visit = chromium.visit(screen)) {
            for (String path : new String[] {
                SOLUTIONS + "?for=bicarbonate_pair",
                SOLUTIONS + "?ask=year&doses=pair&use=3",
                SOLUTIONS + "?ask=bottle&before=9&after=7",
                PH + "?cup_tank=8&cup_outdoors=8.2&cup_room=8.15",
                PH + "?ph=acid"
            }) {
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

    private static String lead(Page page) {
        return page.locator("#lead .lead")
                .first()
                .textContent()
                .replace('\u00a0', ' ')
                .replaceAll("(\\d)(g|L|mL|oz)[a-z]?(?= )", "$1 $2");
    }

    @AfterAll
    void stop() {
        chromium.close();
        program.close();
    }
}
