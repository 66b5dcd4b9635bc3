package org.tidewright.app.forecast;

import static org.assertj.core.api.Assertions.assertThat;

import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.NamedCsvRecord;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import javax.imageio.ImageIO;
import javax.xml.parsers.DocumentBuilderFactory;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.tidewright.app.CommandLineRun;
import org.tidewright.plan.Examples;

/** The command as a keeper types it. */
class ForecastCommandTest {
    @TempDir
    private Path folder = Path.of("");

    private Path plan = Path.of("");

    @BeforeEach
    void writeAPlan() throws IOException {
        plan = folder.resolve("reef.yaml");
        Files.writeString(plan, Examples.text("harbour-room"));
    }

    @Test
    void tellsWhatToExpectAndWhatAChangeDoes() {
        CommandLineRun run = run("--days", "5", "--change", "feed +50 %", "--explain", "nitrate", "--plot", "nitrate");
        assertThat(run.out())
                .contains("the next 5 days")
                .contains("nitrite oxidation")
                .contains("as run");
        assertThat(run.out().lines().mapToInt(String::length).max().orElse(0)).isLessThanOrEqualTo(110);
    }

    @Test
    void everyFaultyChangeIsNamedAtOnceAndNothingIsDone() {
        CommandLineRun run = run("--change", "fead +50 %", "--change", "return pump sideways");
        assertThat(run.exitCode()).isEqualTo(2);
        assertThat(run.err()).contains("Did you mean “feed”?").contains("on or off");
        assertThat(run.out()).isEmpty();
    }

    @Test
    void aMisspeltQuantityIsAnsweredWithTheNearest() {
        CommandLineRun run = run("--plot", "nitrat");
        assertThat(run.exitCode()).isEqualTo(2);
        assertThat(run.err()).contains("Did you mean “nitrate”?");
    }

    @Test
    void listsEveryLever() {
        CommandLineRun run = run("--levers");
        assertThat(run.out()).contains("feed").contains("return pump").contains("light bar hours");
    }

    @Test
    void csvHasOneRowAnHourAndEveryQuantityTwice() {
        CommandLineRun run = run("--days", "2", "--change", "feed +50 %", "--csv", "-");
        List<NamedCsvRecord> rows =
                CsvReader.builder().ofNamedCsvRecord(run.out()).stream().toList();
        assertThat(rows).hasSize(49);
        assertThat(Double.parseDouble(rows.get(48).getField("time_d"))).isEqualTo(2);
        assertThat(Double.parseDouble(rows.get(48).getField("changed_nitrate_mg_per_l")))
                .isGreaterThan(Double.parseDouble(rows.get(48).getField("nitrate_mg_per_l")));
    }

    @Test
    void drawsSvgAndPngThatOtherProgramsRead() throws Exception {
        Path svg = folder.resolve("course.svg");
        Path png = folder.resolve("course.png");
        run("--days", "2", "--plot", "nitrate", "--plot", "ph", "--chart", svg.toString());
        run("--days", "2", "--chart", png.toString());
        DocumentBuilderFactory factory = DocumentBuilderFactory.newInstance();
        factory.setFeature("http://apache.org/xml/features/nonvalidating/load-external-dtd", false);
        assertThat(factory.newDocumentBuilder()
                        .parse(new ByteArrayInputStream(Files.readAllBytes(svg)))
                        .getDocumentElement()
                        .getTagName())
                .isEqualTo("svg");
        assertThat(Files.readString(svg, StandardCharsets.UTF_8)).contains("nitrate");
        assertThat(ImageIO.read(png.toFile()).getWidth()).isEqualTo(1800);
    }

    @Test
    void aFileWithoutAFolderIsRefusedBeforeAnythingIsWorkedOut() {
        CommandLineRun run = run("--csv", folder.resolve("nowhere/course.csv").toString());
        assertThat(run.exitCode()).isEqualTo(2);
        assertThat(run.err()).contains("there is no folder");
        assertThat(run.out()).isEmpty();
    }

    @Test
    void aChangeAfterTheEndIsRefused() {
        CommandLineRun run = run("--days", "2", "--change", "feed +20 % from day 9");
        assertThat(run.exitCode()).isEqualTo(2);
        assertThat(run.err()).contains("it begins after the forecast ends").contains("longer --days");
    }

    @Test
    void aFileOfAnotherKindIsRefused() {
        CommandLineRun run =
                run("--days", "1", "--chart", folder.resolve("course.gif").toString());
        assertThat(run.exitCode()).isEqualTo(2);
        assertThat(run.err()).contains(".svg or .png");
    }

    @Test
    void manyDrawsGiveABandAroundTheUsualCourse() {
        CommandLineRun run = run("--days", "3", "--draws", "20", "--samples", "4", "--csv", "-");
        List<NamedCsvRecord> rows =
                CsvReader.builder().ofNamedCsvRecord(run.out()).stream().toList();
        assertThat(rows).hasSize(4);
        for (NamedCsvRecord row : rows) {
            double low = Double.parseDouble(row.getField("alkalinity_dkh_low"));
            double high = Double.parseDouble(row.getField("alkalinity_dkh_high"));
            assertThat(low).isLessThan(Double.parseDouble(row.getField("alkalinity_dkh_middle")));
            assertThat(Double.parseDouble(row.getField("alkalinity_dkh"))).isBetween(low, high);
        }
        // 8.0 ± 0.3 dKH: 1.645 of them to each side, known from twenty draws to a few tenths.
        assertThat(Double.parseDouble(rows.get(0).getField("alkalinity_dkh_high")))
                .isBetween(8.3, 8.9);
    }

    @Test
    void bandsAreToldInTextJsonPlotAndChart() throws IOException {
        Path svg = folder.resolve("band.svg");
        CommandLineRun text = run(
                "--days",
                "2",
                "--draws",
                "20",
                "--change",
                "feed +50 %",
                "--plot",
                "nitrate",
                "--chart",
                svg.toString());
        assertThat(text.out()).contains("20 draws").contains("░ nine draws of ten");
        assertThat(text.out().lines().mapToInt(String::length).max().orElse(0)).isLessThanOrEqualTo(110);
        assertThat(Files.readString(svg, StandardCharsets.UTF_8)).contains("nine of ten of 20 draws");
        CommandLineRun json = run("--days", "2", "--draws", "20", "--json");
        assertThat(json.out()).contains("\"draws\" : 20").contains("nitrate_mg_per_l_middle");
    }

    @Test
    void numbersOfDrawsAndSamplesThatCannotBeAreRefused() {
        assertThat(run("--draws", "5").err()).contains("--draws: found 5; expected 20 to 2000");
        assertThat(run("--samples", "1").err()).contains("--samples: found 1; expected 2 to 20000");
        assertThat(run("--draws", "2000", "--samples", "20000").err()).contains("at most 500");
    }

    @Test
    void aChangedTemperatureIsToldAsOne() {
        CommandLineRun us = run("--days", "1", "--change", "room temperature 86 °F", "--units", "us");
        assertThat(us.out())
                .contains("Changed: room temperature 86.0")
                .contains("°F")
                .doesNotContain("of the plan's");
    }

    private CommandLineRun run(String... options) {
        String[] all = new String[options.length + 2];
        all[0] = "forecast";
        all[1] = plan.toString();
        System.arraycopy(options, 0, all, 2, options.length);
        return CommandLineRun.of(all);
    }
}
