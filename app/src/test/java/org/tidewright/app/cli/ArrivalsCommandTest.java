package org.tidewright.app.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.tidewright.app.CommandLineRun;
import org.tidewright.app.plans.PlanFolder;
import org.tidewright.app.wishes.WishFolder;
import org.tidewright.plan.Examples;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

class ArrivalsCommandTest {
    @TempDir
    Path folder = Path.of("");

    private String display = "";
    private String box = "";

    @BeforeEach
    void plans() throws IOException {
        display = written("my.yaml", Examples.text("harbour-room"));
        box = written("box.yaml", Examples.text("quarantine-box"));
    }

    private String written(String name, String text) throws IOException {
        Files.writeString(folder.resolve(name), text);
        return folder.resolve(name).toString();
    }

    @Test
    void aListIsPlannedFromPlansAloneAndWrittenAsACalendar() throws IOException {
        String list = written("wishes.csv", "animal,price\nyellow assessor,65\n");
        Path calendar = folder.resolve("arrivals.ics");
        CommandLineRun run = CommandLineRun.of(
                "arrivals",
                "--plan",
                display,
                "--quarantine",
                box,
                "--wishes",
                list,
                "--calendar",
                calendar.toString());
        assertThat(run.exitCode()).as(run.out() + run.err()).isEqualTo(ExitCode.HOLDS);
        assertThat(run.words()).contains("Buy the yellow assessor first, today, into Quarantine box");
        assertThat(Files.readString(calendar))
                .startsWith("BEGIN:VCALENDAR")
                .contains("SUMMARY:Buy the yellow assessor");
    }

    @Test
    void asJsonItTellsDaysAndWhoCannotCome() throws IOException {
        String list = written("wishes.csv", "animal,price\nyellow assessor,65\nyellow tang,90\n");
        CommandLineRun run = CommandLineRun.of(
                "arrivals",
                "--plan",
                display,
                "--quarantine",
                box,
                "--wishes",
                list,
                "--start",
                "2090-01-01",
                "--json");
        assertThat(run.exitCode()).isEqualTo(ExitCode.DOES_NOT_HOLD);
        JsonNode root = JsonMapper.shared().readTree(run.out());
        assertThat(root.get("arrivals")).isEmpty();
        assertThat(root.get("not_planned")).hasSize(2);
        assertThat(root.get("not_planned").get(0).get("refused").booleanValue()).isTrue();
        assertThat(root.get("not_planned").get(1).get("why").get(0).stringValue())
                .contains("2090");
    }

    @Test
    void aSystemsOwnListIsFoundBesideItsPlan() {
        PlanFolder plans = new PlanFolder(folder);
        plans.keep("harbour-room", 0, Examples.text("harbour-room"));
        plans.keep("quarantine-box", 0, Examples.text("quarantine-box"));
        CommandLineRun none = CommandLineRun.of("arrivals", "--folder", folder.toString(), "--system", "harbour-room");
        assertThat(none.exitCode()).isEqualTo(ExitCode.INVALID);
        assertThat(none.err()).contains("there is no wish list", "harbour-room.wishes.csv");
        WishFolder wishes = new WishFolder(folder);
        assertThat(wishes.keep("harbour-room", "", "animal\nyellow assessor\n")).isTrue();
        assertThat(wishes.keep("harbour-room", "", "animal\n")).isFalse();
        CommandLineRun run = CommandLineRun.of("arrivals", "--folder", folder.toString(), "--system", "harbour-room");
        assertThat(run.exitCode()).as(run.out() + run.err()).isEqualTo(ExitCode.HOLDS);
        assertThat(run.words()).contains("yellow assessor: comes");
    }

    @Test
    void faultsAreToldByTheirPlace() throws IOException {
        String list = written("wishes.csv", "animal,price\nyelow tang,65\n");
        CommandLineRun run = CommandLineRun.of("arrivals", "--plan", display, "--wishes", list);
        assertThat(run.exitCode()).isEqualTo(ExitCode.INVALID);
        assertThat(run.err()).contains("wishes.csv:2:1: animal: found “yelow tang”", "Did you mean “yellow tang”?");
        assertThat(CommandLineRun.of("arrivals", "--plan", display, "--wishes", list, "--budget", "much")
                        .exitCode())
                .isEqualTo(ExitCode.INVALID);
    }
}
