package org.tidewright.app.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.tidewright.app.CommandLineRun;
import org.tidewright.plan.Examples;

/** Whatever a plan file holds, a command answers with place, what was found, what was expected, and exit code 2. */
class BadInputTest {
    @TempDir
    Path folder = Path.of("");

    private Path file = Path.of("");

    @BeforeEach
    void choose() {
        file = folder.resolve("my.yaml");
    }

    @Test
    void aNegativeLengthIsRefused() throws IOException {
        refused(
                harbour().replace("length: 150 cm", "length: -150 cm"),
                ":43:11: display.length: found -150 cm; expected 10 to 2000 cm.");
    }

    @Test
    void aBaffleHigherThanItsSumpIsRefused() throws IOException {
        refused(
                harbour().replace("over: 25 cm", "over: 52 cm"),
                "sump.sections[1].baffle.over: found 52 cm; expected less than the sump's height, 42 cm.");
    }

    @Test
    void aNozzleOutsideTheTankIsRefused() throws IOException {
        refused(
                harbour().replace("lower_edge: 43 cm", "lower_edge: 61 cm"),
                "found 61 cm; expected a mouth inside the vessel");
    }

    @Test
    void anUnknownUnitIsRefusedWithASuggestion() throws IOException {
        refused(
                harbour().replace("length: 150 cm", "length: 150 cmm"),
                "found the unknown unit “cmm”",
                "Did you mean “cm”?");
    }

    @Test
    void aFileOfTenMegabytesIsRefusedUnread() throws IOException {
        refused("# " + "x".repeat(10_000_000), "a file of 10000002 bytes", "likely another file");
    }

    @Test
    void anAliasBombIsRefused() throws IOException {
        refused("a: &a [x,x]\nb: &b [*a,*a]\nc: [*b,*b]\n", ":2:8: found a YAML alias");
    }

    @Test
    void anEmptyFileIsAnsweredWithWhereToStart() throws IOException {
        refused("", "found an empty file", "tidewright example harbour-room");
    }

    @Test
    void bytesThatAreNoTextAreRefused() throws IOException {
        Files.write(file, new byte[] {(byte) 0xff, (byte) 0xfe, 0, 1});
        CommandLineRun run = CommandLineRun.of("check", file.toString());
        assertThat(run.exitCode()).isEqualTo(ExitCode.INVALID);
        assertThat(run.err()).contains("bytes that are not text in UTF-8");
    }

    @Test
    void aFileThatIsNotThereIsAnsweredWithHowToStartOne() {
        CommandLineRun run =
                CommandLineRun.of("check", folder.resolve("none.yaml").toString());
        assertThat(run.exitCode()).isEqualTo(ExitCode.INVALID);
        assertThat(run.err()).contains("there is no file").contains("tidewright example harbour-room > ");
    }

    @Test
    void aFolderInPlaceOfAPlanIsNamed() {
        CommandLineRun run = CommandLineRun.of("check", folder.toString());
        assertThat(run.exitCode()).isEqualTo(ExitCode.INVALID);
        assertThat(run.err()).contains("is a folder");
    }

    @Test
    void aWrongOptionIsAnsweredWithTheHelpToRead() {
        CommandLineRun run = CommandLineRun.of("rehearse", file.toString(), "--ours", "3");
        assertThat(run.exitCode()).isEqualTo(ExitCode.INVALID);
        assertThat(run.err()).contains("--ours").contains("tidewright rehearse --help");
    }

    @Test
    void anOutdoorTemperatureWithoutItsUnitIsRefused() throws IOException {
        Files.writeString(file, harbour());
        CommandLineRun run = CommandLineRun.of("rehearse", file.toString(), "--outdoor", "35");
        assertThat(run.exitCode()).isEqualTo(ExitCode.INVALID);
        assertThat(run.err()).contains("“35” without a unit").contains("35C or 20F");
    }

    @Test
    void aWeatherFileThatRunsBackIsRefused() throws IOException {
        Files.writeString(file, harbour());
        Path weather = folder.resolve("weather.csv");
        Files.writeString(weather, "time_h,outdoor_temperature_c\n0,5\n6,2\n3,1\n");
        CommandLineRun run = CommandLineRun.of("rehearse", file.toString(), "--outdoor", weather.toString());
        assertThat(run.exitCode()).isEqualTo(ExitCode.INVALID);
        assertThat(run.err()).contains("times of a weather series must rise");
    }

    @Test
    void aWeatherFileWithAWordForANumberIsRefusedAtItsLine() throws IOException {
        Files.writeString(file, harbour());
        Path weather = folder.resolve("weather.csv");
        Files.writeString(weather, "time_h,outdoor_temperature_c\n0,5\n6,cold\n");
        CommandLineRun run = CommandLineRun.of("rehearse", file.toString(), "--outdoor", weather.toString());
        assertThat(run.exitCode()).isEqualTo(ExitCode.INVALID);
        assertThat(run.err()).contains("weather.csv:3: outdoor_temperature_c: found “cold”");
    }

    @Test
    void hoursThatCannotBeAreRefused() throws IOException {
        Files.writeString(file, harbour());
        for (String hours : List.of("0", "-3", "1e9", "NaN")) {
            CommandLineRun run = CommandLineRun.of("rehearse", file.toString(), "--hours", hours);
            assertThat(run.exitCode()).as(hours).isEqualTo(ExitCode.INVALID);
            assertThat(run.err()).contains("must last more than 0");
        }
    }

    private static String harbour() {
        return Examples.text("harbour-room");
    }

    /** Every command that reads a plan refuses it, with these words, and leaves the file as it was. */
    private void refused(String text, String... words) throws IOException {
        Files.writeString(file, text);
        for (String command : List.of("check", "rehearse", "tidy")) {
            CommandLineRun run = CommandLineRun.of(command, file.toString());
            assertThat(run.exitCode()).as(command).isEqualTo(ExitCode.INVALID);
            assertThat(run.err()).as(command).contains(words).contains("nothing was done");
            assertThat(run.err()).doesNotContain("Exception").doesNotContain("\tat ");
            assertThat(run.out()).as(command).isEmpty();
        }
        CommandLineRun added =
                CommandLineRun.of("serve", "--folder", folder.resolve("systems").toString(), "--add", file.toString());
        assertThat(added.exitCode()).isEqualTo(ExitCode.INVALID);
        assertThat(folder.resolve("systems")).doesNotExist();
        assertThat(file).hasContent(text);
    }
}
