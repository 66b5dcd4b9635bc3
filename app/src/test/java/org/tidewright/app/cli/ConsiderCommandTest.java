package org.tidewright.app.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.tidewright.app.CommandLineRun;
import org.tidewright.plan.Examples;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

class ConsiderCommandTest {
    @TempDir
    Path folder = Path.of("");

    private String plan = "";

    @BeforeEach
    void plan() throws IOException {
        Path file = folder.resolve("my.yaml");
        Files.writeString(file, Examples.text("harbour-room"));
        plan = file.toString();
    }

    @Test
    void aFishThatMayComeExitsWithZeroAndOneThatMayNotWithOne() {
        CommandLineRun snails = CommandLineRun.of("consider", "3 trochus snail", "--plan", plan, "--age", "24");
        assertThat(snails.words()).contains("3 × trochus snail (Trochus sp.)");
        assertThat(snails.exitCode()).as(snails.out()).isEqualTo(ExitCode.HOLDS);
        CommandLineRun gramma = CommandLineRun.of("consider", "royal gramma", "--plan", plan, "--age", "24");
        assertThat(gramma.words())
                .contains("Not yet: It jumps, and your tank is open.")
                .contains("Lay a net");
        assertThat(gramma.exitCode()).isEqualTo(ExitCode.DOES_NOT_HOLD);
        CommandLineRun grouper = CommandLineRun.of("consider", "Cephalopholis miniata", "--plan", plan, "--age", "24");
        assertThat(grouper.exitCode()).isEqualTo(ExitCode.DOES_NOT_HOLD);
        assertThat(grouper.words()).contains("No: ").contains("○ no");
    }

    @Test
    void aListIsJudgedTogether() {
        CommandLineRun run = CommandLineRun.of(
                "consider", "Stenopus hispidus", "Lysmata wurdemanni", "--plan", plan, "--age", "24", "--json");
        JsonNode candidates = JsonMapper.shared().readTree(run.out()).get("candidates");
        assertThat(candidates).hasSize(2);
        JsonNode boxer = candidates.get(0);
        assertThat(boxer.get("species").asString()).isEqualTo("Stenopus hispidus");
        assertThat(boxer.get("verdict").asString()).isEqualTo("no");
        assertThat(boxer.get("reasons").get(0).get("rule").asString()).isNotEmpty();
        assertThat(boxer.get("reasons").get(0).get("sentence").asString()).isNotEmpty();
        assertThat(boxer.get("reasons").get(0).get("source").get(0).asString()).isNotEmpty();
    }

    @Test
    void aNameThatNobodyKnowsIsAnErrorWithWhatWasProbablyMeant() {
        CommandLineRun run = CommandLineRun.of("consider", "yelow tang", "--plan", plan);
        assertThat(run.exitCode()).isEqualTo(ExitCode.INVALID);
        assertThat(run.err()).contains("found “yelow tang”").contains("Did you mean “yellow tang”?");
    }

    @Test
    void aKeepersOwnRowChangesTheVerdictAndItsFaultsStopIt() throws IOException {
        Path own = folder.resolve("fish.csv");
        Files.writeString(own, "scientific_name,jump_0to3\nGramma loreto,nine\n");
        CommandLineRun run = CommandLineRun.of("consider", "royal gramma", "--plan", plan, "--fish", own.toString());
        assertThat(run.exitCode()).isEqualTo(ExitCode.INVALID);
        assertThat(run.err()).contains("2:2: Gramma loreto, jump_0to3: found “nine”");
        Files.writeString(own, "scientific_name,temperature_least_c,temperature_most_c\nGramma loreto,10,18\n");
        CommandLineRun cold = CommandLineRun.of("consider", "royal gramma", "--plan", plan, "--fish", own.toString());
        assertThat(cold.words()).contains("No: Your water is too warm for it");
    }
}
