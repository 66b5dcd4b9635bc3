package org.tidewright.trials.use;

import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;

/** The Build page as a keeper uses it. */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class BuildPageIT {
    private final Program program = Program.demo();
    private final Chromium chromium = Chromium.start();

    @Test
    void everyCheckHasItsSentenceAndTheFailingOneLeads() {
        try (Visit visit = chromium.visit(Screen.DESK_LIGHT)) {
            Page page = open(visit, "systems/harbour-room/build");
            assertThat(page.locator(".lead").textContent()).contains("Brush the air hole clear");
            Locator rows = page.locator("table.checks tbody tr");
            assertThat(rows.count()).isGreaterThan(10);
            for (Locator row : rows.all()) {
                assertThat(sentence(row)).endsWith(".");
            }
        }
    }

    @Test
    void everyLetterOfASourceLeadsToItsNote() {
        try (Visit visit = chromium.visit(Screen.DESK_LIGHT)) {
            Page page = open(visit, "systems/harbour-room/build");
            for (Locator letter : page.locator("a.src").all()) {
                String target = letter.getAttribute("href");
                assertThat(target).startsWith("#");
                assertThat(page.locator("[id='" + target.substring(1) + "']").count())
                        .as("note for %s", target)
                        .isEqualTo(1);
            }
        }
    }

    @Test
    void theDrawingShowsTheFloorWetWithTheAirHoleBlocked() {
        try (Visit visit = chromium.visit(Screen.DESK_DARK)) {
            Page page = open(visit, "systems/harbour-room/build");
            page.locator("label", new Page.LocatorOptions().setHasText("cut, air hole blocked"))
                    .click();
            page.waitForCondition(
                    () -> page.locator("[data-drawing]").textContent().contains("on the floor"));
            visit.assertNothingWentWrong();
        }
    }

    @Test
    void anAddressThatLeadsNowhereIsAnsweredInTheSameLook() {
        try (Visit visit = chromium.visit(Screen.PHONE_LIGHT)) {
            Page page = visit.page();
            int status = page.navigate(
                            program.address().resolve("systems/none/build").toString())
                    .status();
            assertThat(status).isEqualTo(404);
            assertThat(page.locator("h1").textContent()).isNotBlank();
            visit.assertAccessible();
        }
    }

    /** What a row says, without the raised letters that lead to its sources. */
    private static String sentence(Locator row) {
        return (String) row.locator("td").last().evaluate("""
                cell => {
                    const words = cell.cloneNode(true);
                    words.querySelectorAll("a.src").forEach(letter => letter.remove());
                    return words.textContent.trim();
                }""");
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
