package org.tidewright.trials.use;

import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.FileChooser;
import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.FilePayload;
import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.regex.Pattern;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;

/** What goes into the log otherwise than by a line: a spreadsheet, a photo, a dose that is moved against advice. */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class LogIntakeIT {
    private static final String NANO = "systems/window-nano/";
    private static final String HARBOUR = "systems/harbour-room/";

    /** Invented. The day of the month decides the order of dates; the specific gravity leaves its temperatures open. */
    private static final String MIXED = """
            Date,Time,Alk dKH,Alk 2 meq/L,Ca ppm,Temp °F,SG,Notes
            6/13/2025,7:30 PM,8.1,2.90,420,78.1,1.0255,new <b>salt</b>
            6/16/2025,7:45 PM,8.0,2.86,425,77.9,1.0252,
            6/19/2025,8:00 PM,7.9,2.82,415,78.4,1.0250,
            6/22/2025,7:10 PM,8.2,2.93,420,78.0,1.0254,
            """;

    private final Program program = Program.demo();
    private final Chromium chromium = Chromium.start();

    @Test
    void aSpreadsheetOfMixedUnitsIsTakenInByKeyboardOnAPhone() {
        try (Visit visit = chromium.visit(Screen.PHONE_LIGHT)) {
            Page page = open(visit, NANO + "log");
            visit.tabTo("a[href$='/log/import']");
            page.keyboard().press("Enter");
            page.waitForURL(Pattern.compile(".*/log/import"));
            assertSound(visit);
            choose(visit);

            visit.tabTo("select[name=column_7]");
            assertThat(page.locator("#column_7-title").textContent()).contains("SG");
            assertThat(page.locator("select[name=column_4]").inputValue()).isEqualTo("alkalinity meq_per_l");
            assertThat(page.locator("select[name=column_6]").inputValue()).isEqualTo("temperature f");
            assertSound(visit);
            // From “please choose” to the guess.
            page.keyboard().press("ArrowDown");
            visit.tabTo("form.import > .deeds:last-child button");
            page.keyboard().press("Enter");
            page.locator("#preview").waitFor();
            assertThat(page.locator("#preview").textContent())
                    .contains("4 rows, 20 numbers, 1 note", "20 lines are new.", "1.025 to 1.0255 SG 25/25");
            assertSound(visit);
            assertThat(page.locator("#preview b").count())
                    .as("markup of a cell")
                    .isZero();

            visit.tabTo("button[value=keep]");
            page.keyboard().press("Enter");
            page.waitForURL(Pattern.compile(".*/log/import\\?lines=20.*"));
            assertThat(page.locator("[data-lead]").textContent()).isEqualTo("Kept: 20 lines are new in the log.");
            visit.tabTo("main .deeds a");
            page.keyboard().press("Enter");
            page.waitForURL(Pattern.compile(".*/log\\?month=2025-06"));
            assertThat(page.locator(".lines").textContent())
                    .contains("alkalinity 8.1 dKH", "alkalinity 2.9 meq/L", "calcium 420 mg/L", "temperature 78.1 °F")
                    .contains("salinity 1.0255 SG 25/25", "new <b>salt</b>");
            visit.assertNothingWentWrong();
        }
    }

    @Test
    void theSameSheetTakenInAgainWithoutScriptAddsNothing() {
        try (Visit visit = chromium.visitWithoutScript(Screen.DESK_DARK)) {
            for (int time = 1; time <= 2; time++) {
                Page page = open(visit, "systems/fifty-five-gallon/log/import");
                page.setInputFiles("#sheet-file", sheet("again.csv"));
                page.locator("main form button").click();
                page.locator("select[name=column_7]").selectOption("salinity sg_25c_25c");
                page.locator("form.import > .deeds button").last().click();
                page.locator("button[value=keep]").click();
                page.waitForURL(Pattern.compile(".*\\?lines=.*"));
                assertThat(page.locator("[data-lead]").textContent())
                        .startsWith(time == 1 ? "Kept: 20 lines are new" : "All of it was there already");
            }
            visit.assertNothingWentWrong();
        }
    }

    @Test
    void aPhotoOfWhatWasSeenStandsInTheLogAndOnItsLinesPage() throws IOException {
        try (Visit visit = chromium.visit(Screen.PHONE_DARK)) {
            Page page = open(visit, NANO + "log");
            page.locator("#line-text").fill("saw white spots on a snail");
            page.setInputFiles("#line-photo-file", new FilePayload("spots.bin", "text/html", picture()));
            page.locator("#next-line button[type=submit]").click();
            page.waitForURL(Pattern.compile(".*/log\\?kept=.*"));
            Locator photo = page.locator(".log .picture img");
            photo.scrollIntoViewIfNeeded();
            assertThat(photo.getAttribute("alt")).isEqualTo("Photo: white spots on a snail");
            page.waitForCondition(
                    () -> photo.evaluate("image => image.naturalWidth").equals(40));
            assertSound(visit);
            page.locator("table.log a", new Page.LocatorOptions().setHasText("saw white spots"))
                    .first()
                    .click();
            page.waitForURL(Pattern.compile(".*/log/[0-9a-f-]{36}"));
            assertThat(page.locator(".line-photo img").evaluate("image => image.naturalHeight"))
                    .isEqualTo(30);
            assertSound(visit);
            visit.assertNothingWentWrong();
        }
    }

    @Test
    void aDoseThatSettlesIsAskedAboutOnceAndMovedIfTheKeeperInsists() {
        try (Visit visit = chromium.visit(Screen.PHONE_LIGHT)) {
            Page page = open(visit, HARBOUR + "log");
            page.locator("#line-text").fill("set calcium dose 60 mL/d");
            page.keyboard().press("Enter");
            Locator insist = page.locator("button[name=all_the_same]");
            insist.waitFor();
            assertThat(page.locator("#line-fault").textContent()).startsWith("Leave the calcium dose alone until ");
            assertThat(page.locator("#line-text").inputValue()).isEqualTo("set calcium dose 60 mL/d");
            visit.assertAccessible();
            visit.assertNothingSticksOut();
            assertThat(page.locator("table.log").first().textContent()).doesNotContain("60 mL/d");
            insist.press("Enter");
            page.waitForURL(Pattern.compile(".*/log\\?kept=.*"));
            assertThat(page.locator("[data-lead]").textContent()).contains("set calcium dose 60 mL/d");
        }
    }

    private void choose(Visit visit) {
        Page page = visit.page();
        visit.tabTo("#sheet-file");
        FileChooser chooser = page.waitForFileChooser(() -> {
            // Answered only once the browser knows that its own dialog is not to open.
            page.evaluate("0");
            page.keyboard().press("Enter");
        });
        chooser.setFiles(sheet("my log.csv"));
        visit.tabTo("main form button");
        page.keyboard().press("Enter");
        page.locator("form.import").waitFor();
    }

    private static FilePayload sheet(String name) {
        return new FilePayload(name, "text/csv", MIXED.getBytes(StandardCharsets.UTF_8));
    }

    private static byte[] picture() throws IOException {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        ImageIO.write(new BufferedImage(40, 30, BufferedImage.TYPE_INT_RGB), "png", bytes);
        return bytes.toByteArray();
    }

    private static void assertSound(Visit visit) {
        visit.assertAccessible();
        visit.assertNothingSticksOut();
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
