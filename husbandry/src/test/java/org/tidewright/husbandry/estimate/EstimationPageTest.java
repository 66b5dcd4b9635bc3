package org.tidewright.husbandry.estimate;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.tidewright.husbandry.estimate.CoverageStudy.Subject;
import org.tidewright.plan.method.QuantityUnit;
import org.tidewright.plan.method.WaterQuantity;

/**
 * The tables of the page about estimates. With {@code -Destimation.write} a thousand tanks and all logs are run, which takes
 * some minutes, and the tables are written anew.
 */
class EstimationPageTest {
    private static final Path PAGE = Path.of("..", "docs", "science", "estimation.md");
    private static final long SEED = 20_260_701;
    private static final int TANKS = 1000;

    @Test
    void theTablesAreComplete() throws IOException {
        if (System.getProperty("estimation.write") != null) {
            write("tanks", tanks());
            write("logs", logs());
        }
        String page = Files.readString(PAGE);
        for (Subject subject : Subject.values()) {
            assertThat(between(page, "tanks")).contains("| " + subject.words + " |");
        }
        for (WaterQuantity quantity : WaterQuantity.values()) {
            assertThat(between(page, "tanks")).contains("| " + quantity.words() + " |");
        }
        assertThat(between(page, "logs").lines().count()).isGreaterThan(8);
    }

    private static List<String> tanks() {
        CoverageStudy study = CoverageStudy.of(SEED, TANKS);
        List<String> rows = new ArrayList<>();
        rows.add("| what | of | unit | cases | held, % | too low, % | middle error | last reading | line through 4 |");
        rows.add("|---|---|---|---:|---:|---:|---:|---:|---:|");
        for (Subject subject : Subject.values()) {
            study.of(subject).forEach((quantity, tally) -> rows.add(row(subject.words, quantity, tally)));
        }
        rows.add("");
        rows.add(String.format(
                Locale.ROOT,
                "%d tanks. Of their gross mistakes %.0f %% were set aside, and of the sound readings %.2f %%.",
                study.tanks(),
                100 * study.mistakesFound(),
                100 * study.soundSetAside()));
        return rows;
    }

    private static List<String> logs() {
        List<String> rows = new ArrayList<>();
        rows.add("| what | of | unit | cases | held, % | too low, % | middle error | last reading | line through 4 |");
        rows.add("|---|---|---|---:|---:|---:|---:|---:|---:|");
        Map<String, WaterQuantity> tanks = Map.of(
                "temperature", WaterQuantity.TEMPERATURE,
                "salinity", WaterQuantity.SALINITY,
                "ph", WaterQuantity.PH,
                "oxygen", WaterQuantity.OXYGEN);
        for (String name : List.of("temperature", "salinity", "ph", "oxygen")) {
            rows.add(row("eelgrass tanks", tanks.getOrDefault(name, WaterQuantity.OXYGEN), RealLogTest.eelgrass(name)));
        }
        rows.add(row("office", WaterQuantity.TEMPERATURE, RealLogTest.office()));
        for (WaterQuantity quantity : List.of(WaterQuantity.AMMONIA, WaterQuantity.PHOSPHATE, WaterQuantity.NITRATE)) {
            rows.add(row("jellyfish", quantity, RealLogTest.jellyfish(quantity.key())));
        }
        return rows;
    }

    private static String row(String what, WaterQuantity quantity, Tally tally) {
        QuantityUnit unit = quantity.units().get(0);
        double one = TestInputs.one(quantity);
        String errors = tally.isCompared()
                ? String.format(
                        Locale.ROOT,
                        "%s | %s | %s",
                        digits(tally.middleError(0) / one),
                        digits(tally.middleError(1) / one),
                        digits(tally.middleError(2) / one))
                : " | | ";
        return String.format(
                Locale.ROOT,
                "| %s | %s | %s | %d | %.1f | %.1f | %s |",
                what,
                quantity.words(),
                unit.symbol(),
                tally.count(),
                100 * tally.coverage(),
                100 * tally.below(),
                errors);
    }

    /** Two digits that mean something; nothing where there is no number. */
    private static String digits(double number) {
        if (Double.isNaN(number)) {
            return "";
        }
        return new java.math.BigDecimal(number)
                .round(new java.math.MathContext(2))
                .toPlainString();
    }

    private static void write(String name, List<String> rows) throws IOException {
        String page = Files.readString(PAGE);
        String generated = "\n" + String.join("\n", rows) + "\n";
        Files.writeString(PAGE, page.substring(0, start(page, name)) + generated + page.substring(end(page, name)));
    }

    private static String between(String page, String name) {
        return page.substring(start(page, name), end(page, name));
    }

    private static int start(String page, String name) {
        String mark = "<!-- " + name + ": generated -->\n";
        int at = page.indexOf(mark);
        assertThat(at).as("“" + mark + "” on the page").isNotNegative();
        return at + mark.length();
    }

    private static int end(String page, String name) {
        int at = page.indexOf("<!-- end of " + name + " -->");
        assertThat(at).as("the end of " + name + " on the page").isGreaterThanOrEqualTo(start(page, name));
        return at;
    }
}
