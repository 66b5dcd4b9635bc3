package org.tidewright.app.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.tidewright.app.CommandLineRun;
import org.tidewright.plan.Examples;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

class CommandsTest {
    private static final JsonMapper JSON = JsonMapper.builder().build();

    @TempDir
    Path folder = Path.of("");

    @Test
    void checkExitsWithOneWhenSomethingDoesNotHold() throws IOException {
        CommandLineRun run = CommandLineRun.of("check", example("harbour-room"));
        assertThat(run.exitCode()).isEqualTo(ExitCode.DOES_NOT_HOLD);
        assertThat(run.out())
                .contains("⊘ fails      Power cut, air hole blocked")
                .contains("● holds      Power cut");
        assertThat(run.err()).isEmpty();
    }

    @Test
    void checkExitsWithZeroWhenAllHolds() throws IOException {
        // The demo's one fault mended as its sentence says: the nozzle raised, so that less can run back.
        Path mended = folder.resolve("mended.yaml");
        Files.writeString(mended, Examples.text("harbour-room").replace("lower_edge: 43 cm", "lower_edge: 45.7 cm"));
        CommandLineRun run = CommandLineRun.of("check", mended.toString());
        assertThat(run.out()).doesNotContain("⊘ fails").contains("Nothing presses.");
        assertThat(run.exitCode()).isEqualTo(ExitCode.HOLDS);
    }

    @Test
    void checkTellsTheKeepersUnitsOrThoseAskedFor() throws IOException {
        String plan = example("fifty-five-gallon");
        assertThat(CommandLineRun.of("check", plan).out()).contains(" gal ").doesNotContain(" L ");
        assertThat(CommandLineRun.of("check", plan, "--units", "metric").out())
                .contains(" L ")
                .doesNotContain(" gal ");
    }

    @Test
    void checkAsJsonCarriesUnitsInItsNames() throws IOException {
        CommandLineRun run = CommandLineRun.of("check", example("harbour-room"), "--json");
        JsonNode root = JSON.readTree(run.out());
        assertThat(root.get("holds").asBoolean()).isFalse();
        JsonNode cut = root.get("checks").get(0);
        assertThat(cut.get("id").asString()).isEqualTo("power_cut");
        assertThat(cut.get("margin_l").asDouble()).isBetween(5.0, 20.0);
        assertThat(cut.get("margin_standard_error_l").asDouble()).isBetween(1.0, 6.0);
    }

    @Test
    void rehearseExitsWithOneWhenWaterReachesTheFloor() throws IOException {
        String plan = example("harbour-room");
        CommandLineRun clear = CommandLineRun.of("rehearse", plan, "--hours", "24", "--outdoor", "35C");
        assertThat(clear.exitCode()).isEqualTo(ExitCode.HOLDS);
        assertThat(clear.words()).contains("The floor stays dry").contains("With 35 °C outdoors");
        CommandLineRun blocked = CommandLineRun.of("rehearse", plan, "--air-holes", "blocked");
        assertThat(blocked.exitCode()).isEqualTo(ExitCode.DOES_NOT_HOLD);
        assertThat(blocked.words()).contains("Clear the air hole today:").contains("reach the floor");
    }

    @Test
    void rehearseTakesWeatherBelowZeroAndFromAFile() throws IOException {
        String plan = example("window-nano");
        assertThat(CommandLineRun.of("rehearse", plan, "--outdoor", "-5C").words())
                .contains("With −5 °C outdoors");
        Path weather = folder.resolve("weather.csv");
        Files.writeString(weather, "time_h,outdoor_temperature_c\n0,5\n12,-3\n24,5\n");
        CommandLineRun run = CommandLineRun.of("rehearse", plan, "--outdoor", weather.toString());
        assertThat(run.exitCode()).isEqualTo(ExitCode.HOLDS);
        assertThat(run.words()).contains("With −3 °C to 5 °C outdoors");
    }

    @Test
    void rehearseAsJsonHasNullForNever() throws IOException {
        CommandLineRun run = CommandLineRun.of("rehearse", example("window-nano"), "--outdoor", "0C", "--json");
        JsonNode root = JSON.readTree(run.out());
        assertThat(root.get("water").get("floor_dry").asBoolean()).isTrue();
        boolean never = false;
        for (JsonNode crossing : root.get("crossings")) {
            if (crossing.get("side").asString().equals("above")) {
                never |= crossing.get("after_h").isNull();
                assertThat(crossing.get("share_of_draws").asDouble()).isZero();
            }
        }
        assertThat(never).isTrue();
    }

    @ParameterizedTest
    @ValueSource(strings = {"check", "rehearse", "demo", "serve", "example", "tidy", "schema"})
    void everyCommandsHelpTeachesByExample(String command) {
        CommandLineRun run = CommandLineRun.of(command, "--help");
        assertThat(run.exitCode()).isZero();
        assertThat(run.out()).contains("Example").contains("tidewright " + command);
    }

    @Test
    void completionIsABashScriptThatKnowsTheCommands() {
        CommandLineRun run = CommandLineRun.of("generate-completion");
        assertThat(run.exitCode()).isZero();
        assertThat(run.out()).contains("complete ").contains("rehearse").contains("--outdoor");
    }

    @Test
    void withoutACommandTheHelpSaysWhereToStart() {
        assertThat(CommandLineRun.of().out()).contains("tidewright demo");
    }

    @Test
    void tidyKeepsCommentsAndMeaning() throws IOException {
        CommandLineRun once = CommandLineRun.of("tidy", example("harbour-room"));
        assertThat(once.exitCode()).isZero();
        Path tidied = folder.resolve("tidied.yaml");
        Files.writeString(tidied, once.out());
        assertThat(once.out()).contains("# counted as absent");
        assertThat(CommandLineRun.of("tidy", tidied.toString()).out()).isEqualTo(once.out());
    }

    private String example(String name) throws IOException {
        Path file = folder.resolve(name + ".yaml");
        Files.writeString(file, Examples.text(name));
        return file.toString();
    }
}
