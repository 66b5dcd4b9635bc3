package org.tidewright.app.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.time.Clock;
import java.time.ZoneId;
import java.time.ZonedDateTime;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.tidewright.app.CommandLineRun;
import org.tidewright.app.demo.DemoJournal;
import org.tidewright.app.folder.KeptFolder;
import org.tidewright.husbandry.journal.Event;
import org.tidewright.husbandry.journal.Line;
import org.tidewright.plan.Examples;
import org.tidewright.plan.model.Plan;
import org.tidewright.plan.text.PlanReading;
import org.tidewright.plan.text.PlanText;

/** Lines written on the command line, into the demo's invented log, in which both doses were moved three days ago. */
class NoteCommandTest {
    private static final String SYSTEM = "harbour-room";
    private static final Clock CLOCK = Clock.system(ZoneId.systemDefault());

    @TempDir
    private Path folder = Path.of("");

    @BeforeEach
    void invent() {
        Plan plan = ((PlanReading.Sound) PlanText.read(Examples.text(SYSTEM))).plan();
        try (KeptFolder kept = new KeptFolder(folder, CLOCK)) {
            kept.plans().keep(SYSTEM, 0, Examples.text(SYSTEM));
            kept.journal()
                    .writeAll(
                            SYSTEM,
                            DemoJournal.of(plan, ZonedDateTime.now(CLOCK)).lines(),
                            done -> {});
        }
    }

    private CommandLineRun note(String... words) {
        List<String> arguments = new ArrayList<>(List.of("note", "--folder", folder.toString()));
        arguments.addAll(List.of(words));
        return CommandLineRun.of(arguments.toArray(String[]::new));
    }

    private List<Line> lines() {
        try (KeptFolder kept = new KeptFolder(folder, CLOCK)) {
            return kept.journal().everything(SYSTEM);
        }
    }

    @Test
    void aDoseThatIsMovedAgainTooSoonIsAskedAboutAndKeptWithAllTheSame() {
        int before = lines().size();
        CommandLineRun asked = note("set", "calcium", "dose", "60", "mL/d");
        assertThat(asked.exitCode()).isEqualTo(ExitCode.INVALID);
        assertThat(asked.err().replaceAll("\\s+", " "))
                .contains("Leave the calcium dose alone until", "Nothing was written", "add --all-the-same");
        assertThat(lines()).hasSize(before);

        CommandLineRun insisted = note("set", "calcium", "dose", "60", "mL/d", "--all-the-same");
        assertThat(insisted.exitCode()).isEqualTo(ExitCode.HOLDS);
        assertThat(insisted.words()).contains("set calcium dose");
        assertThat(lines()).hasSize(before + 1);
        assertThat(lines().get(before).event())
                .isInstanceOfSatisfying(
                        Event.LeverMoved.class,
                        moved -> assertThat(moved.lever()).isEqualTo("calcium dose"));
    }

    @Test
    void whatSettlesHoldsUpNoOtherLine() {
        int before = lines().size();
        assertThat(note("changed", "40", "L").exitCode()).isEqualTo(ExitCode.HOLDS);
        assertThat(note("alkalinity", "8.1", "dKH", "by", "photometer").exitCode())
                .isEqualTo(ExitCode.HOLDS);
        assertThat(lines()).hasSize(before + 2);
    }
}
