package org.tidewright.trials.use;

import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Page;
import java.util.regex.Pattern;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;

/** Editing a plan on its page. */
@TestInstance(TestInstance.Lifecycle.PER_METHOD)
class PlanPageIT {
    private static final String PAGE = "systems/window-nano/plan";

    private final Program program = Program.demo();
    private final Chromium chromium = Chromium.start();

    @Test
    void aFaultIsShownBesideItsLineWhileTyping() {
        try (Visit visit = chromium.visit(Screen.DESK_LIGHT)) {
            Page page = open(visit);
            String text = page.locator("#plan-text").inputValue();
            page.locator("#plan-text").fill(text.replace("height: 36 cm", "heigth: 36 cm"));
            page.locator("[data-gutter] li.faulty").first().waitFor();
            assertThat(page.locator("[data-faults]").textContent()).contains("Did you mean “height”?");
            // Following the fault moves the caret to its line.
            page.locator("[data-faults] a").last().click();
            assertThat((Boolean) page.evaluate(
                            "() => { const t = document.getElementById('plan-text'); return document.activeElement === t"
                                    + " && t.value.slice(0, t.selectionEnd).split('\\n').pop().includes('heigth'); }"))
                    .isTrue();
            visit.assertNothingWentWrong();
            visit.assertAccessible();
        }
    }

    @Test
    void aFaultyPlanIsNotSavedAndNothingTypedIsLost() {
        try (Visit visit = chromium.visitWithoutScript(Screen.PHONE_LIGHT)) {
            Page page = open(visit);
            String typed = page.locator("#plan-text").inputValue().replace("length: 60 cm", "length: 60 parsec");
            page.locator("#plan-text").fill(typed);
            page.locator("button[type=submit]").click();
            assertThat(page.locator("[data-faults]").textContent()).contains("the unknown unit “parsec”");
            assertThat(page.locator("#plan-text").inputValue().strip()).isEqualTo(typed.strip());
            page.navigate(program.address().resolve(PAGE).toString());
            assertThat(page.locator("#plan-text").inputValue()).contains("length: 60 cm");
        }
    }

    @Test
    void aSavedPlanIsTheNextRevisionAndChangesThePages() {
        try (Visit visit = chromium.visit(Screen.DESK_LIGHT)) {
            Page page = open(visit);
            String text = page.locator("#plan-text").inputValue();
            page.locator("#plan-text").fill(text.replace("name: Window nano", "name: Sill nano"));
            page.locator("button[type=submit]").click();
            page.waitForCondition(() -> page.content().contains("revision 2"));
            page.navigate(program.address().resolve("systems/window-nano/build").toString());
            assertThat(page.locator("h1").textContent()).contains("Sill nano");
            visit.assertNothingWentWrong();
        }
    }

    @Test
    void whoSavesOverSomebodyElseIsToldAndLosesNothing() {
        try (Visit one = chromium.visit(Screen.DESK_LIGHT);
                Visit other = chromium.visit(Screen.DESK_LIGHT)) {
            Page first = open(one);
            Page second = open(other);
            String text = first.locator("#plan-text").inputValue();
            first.locator("#plan-text").fill(text.replace("height: 36 cm", "height: 40 cm"));
            first.locator("button[type=submit]").click();
            first.waitForCondition(() -> first.content().contains("revision 2"));
            String mine = text.replace("width: 35 cm", "width: 37 cm");
            second.locator("#plan-text").fill(mine);
            second.locator("button[type=submit]").click();
            second.locator(".conflict").waitFor();
            assertThat(second.locator("#plan-text").inputValue()).contains("width: 37 cm");
            assertThat(second.locator(".theirs").textContent()).contains("height: 40 cm");
            other.assertAccessible();
        }
    }

    @Test
    void aPlanNamedLikeScriptIsShownAndNotRun() {
        try (Visit visit = chromium.visit(Screen.DESK_LIGHT)) {
            Page page = open(visit);
            String text = page.locator("#plan-text").inputValue();
            page.locator("#plan-text")
                    .fill(text.replace("name: Window nano", "name: \"<script>document.title='taken'</script>\""));
            page.locator("button[type=submit]").click();
            page.waitForCondition(() -> page.content().contains("revision 2"));
            page.navigate(
                    program.address().resolve("systems/window-nano/rehearse").toString());
            assertThat(page.title()).doesNotMatch(Pattern.compile("^taken$"));
            assertThat(page.locator(".water-pick summary").textContent()).contains("<script>");
            visit.assertNothingWentWrong();
        }
    }

    private Page open(Visit visit) {
        visit.open(program.address().resolve(PAGE));
        return visit.page();
    }

    @AfterEach
    void stop() {
        chromium.close();
        program.close();
    }
}
