package org.tidewright.store;

import static org.assertj.core.api.Assertions.assertThat;
import static org.tidewright.store.Samples.ALL;
import static org.tidewright.store.Samples.REEF;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.SplittableRandom;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.tidewright.husbandry.journal.Line;
import org.tidewright.husbandry.journal.ProbeLog.Bin;
import org.tidewright.husbandry.journal.ProbeLog.Value;
import org.tidewright.husbandry.journal.Span;

/**
 * What befalls programs, each in a process of its own. One is killed in the middle of its work, again and again, and nothing it
 * was told is kept may be lost. That the writes
 * reach the disk too, which no kill can tell, is the matter of {@code synchronous=FULL}; see docs/decisions.
 */
class ProgramFaultIT {
    private static final int KILLS = Integer.getInteger("kills", 100);

    /** Longest time, after its first acknowledgement, that a program is let live. */
    private static final int LONGEST_LIFE_MS = 60;

    @TempDir
    private Path folder;

    private final List<Process> programs = new ArrayList<>();

    @AfterEach
    void leaveNoneRunning() {
        programs.forEach(Process::destroyForcibly);
    }

    @Test
    void whatWasAcknowledgedSurvivesEveryKill() throws Exception {
        SplittableRandom random = new SplittableRandom(KILLS);
        List<String> acknowledged = new ArrayList<>();
        for (int kill = 0; kill < KILLS; kill++) {
            // Each fifth may not even have opened the file.
            boolean early = kill % 5 == 0;
            acknowledged.addAll(startAndKill(kill, early, random.nextInt(early ? 700 : LONGEST_LIFE_MS)));
            try (Store store = open()) {
                assertThat(store.faults()).as("faults after kill %d", kill).isEmpty();
                assertAllThere(store, acknowledged);
            }
        }
        assertThat(acknowledged).hasSizeGreaterThan(KILLS);
    }

    @Test
    void severalProgramsThatBeginWithTheSameNewFileAllFindWhatTheyWrote() throws Exception {
        for (int i = 0; i < 3; i++) {
            start(i);
        }
        List<String> acknowledged = new ArrayList<>();
        for (int i = 0; i < 3; i++) {
            waitUntilItSays(30, programs.get(i), i);
            programs.get(i).destroyForcibly().waitFor();
            acknowledged.addAll(said(i));
        }
        try (Store store = open()) {
            assertThat(store.faults()).isEmpty();
            assertAllThere(store, acknowledged);
        }
    }

    @Test
    void whereSqliteCannotBeStartedItIsSaidWhatItNeeds() throws Exception {
        assertThat(start(0, folder.resolve("nowhere")).waitFor()).isEqualTo(1);
        assertThat(errors(0)).content().contains("name a folder for them with -Dorg.sqlite.tmpdir=");
        assertThat(said(0)).isEmpty();
    }

    private Store open() {
        return Store.open(folder.resolve("reef.db"), new TestClock());
    }

    /** Returns what it said was kept, as far as it got to say it. */
    private List<String> startAndKill(int seed, boolean early, int lifeMs) throws Exception {
        Process program = start(seed);
        if (!early) {
            waitUntilItSays(1, program, seed);
        }
        Thread.sleep(lifeMs);
        program.destroyForcibly().waitFor();
        assertThat(errors(seed)).isEmptyFile();
        return said(seed);
    }

    private Process start(int seed) throws IOException {
        return start(seed, Files.createDirectories(folder.resolve("temporary")));
    }

    private Process start(int seed, Path temporary) throws IOException {
        Process program = new ProcessBuilder(
                        Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                        "-Xmx64m",
                        "-XX:TieredStopAtLevel=1",
                        "-XX:+UseSerialGC",
                        "-Djava.io.tmpdir=" + temporary,
                        "-cp",
                        System.getProperty("java.class.path"),
                        WritingProgram.class.getName(),
                        folder.resolve("reef.db").toString(),
                        String.valueOf(seed))
                .redirectOutput(output(seed).toFile())
                .redirectError(errors(seed).toFile())
                .start();
        programs.add(program);
        return program;
    }

    private Path output(int seed) {
        return folder.resolve("said-" + seed + ".txt");
    }

    private Path errors(int seed) {
        return folder.resolve("errors-" + seed + ".txt");
    }

    private void waitUntilItSays(int lines, Process program, int seed) throws Exception {
        while (said(seed).size() < lines) {
            assertThat(program.isAlive()).as(() -> errors(seed).toString()).isTrue();
            Thread.sleep(5);
        }
    }

    /** The lines it said; what follows the last of them was not said to its end. */
    private List<String> said(int seed) throws IOException {
        String all = Files.readString(output(seed));
        return all.substring(0, all.lastIndexOf('\n') + 1).lines().toList();
    }

    private static void assertAllThere(Store store, List<String> acknowledged) {
        List<Line> lines = store.journal().everything(REEF);
        List<Value> values = store.probes().values(REEF, WritingProgram.SUMP, Span.EVER);
        Set<String> kept = new HashSet<>();
        lines.forEach(line -> kept.add(WritingProgram.said(line)));
        values.forEach(value -> kept.add(WritingProgram.said(value)));
        assertThat(kept).containsAll(acknowledged);
        assertThat(store.journal().lines(REEF, Span.EVER, ALL))
                .as("one revision of each line stands")
                .hasSize((int) lines.stream().map(Line::id).distinct().count());
        assertThat(store.probes().bins(REEF, WritingProgram.SUMP, Span.EVER, 1).stream()
                        .mapToInt(Bin::count)
                        .sum())
                .as("values in the summaries of days")
                .isEqualTo(values.size());
    }
}
