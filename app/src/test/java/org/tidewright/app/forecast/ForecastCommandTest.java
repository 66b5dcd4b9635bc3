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

    private CommandLineRun run(String... options) {
        String[] all = new String[options.length + 2];
        all[0] = "forecast";
        all[1] = plan.toString();
        System.arraycopy(options, 0, all, 2, options.length);
        return CommandLineRun.of(all);
    }
}
