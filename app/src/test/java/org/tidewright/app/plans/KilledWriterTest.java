package org.tidewright.app.plans;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Random;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A writer killed in the middle, again and again: every revision it said it kept is there, and none is half. */
class KilledWriterTest {
    private static final int KILLS = 12;
    private static final String LINE = "a line of the plan, long enough to be torn in two by a pulled plug\n";

    @TempDir
    Path root = Path.of("");

    @Test
    void losesNothingItAcknowledgedAndTearsNothing() throws IOException, InterruptedException {
        Random random = new Random(7);
        int acknowledged = 0;
        for (int kill = 0; kill < KILLS; kill++) {
            acknowledged = writeUntilKilled(random, acknowledged);
            PlanFolder plans = new PlanFolder(root);
            int newest = plans.newest("reef").map(PlanFolder.Kept::revision).orElse(0);
            assertThat(newest).isGreaterThanOrEqualTo(acknowledged);
            for (int revision = 1; revision <= newest; revision++) {
                String text = Files.readString(root.resolve("reef").resolve("revision-%04d.yaml".formatted(revision)));
                assertThat(text).as("revision %d after kill %d", revision, kill).isEqualTo(text(revision));
            }
            acknowledged = newest;
        }
        assertThat(acknowledged).as("revisions written at all").isGreaterThan(KILLS);
    }

    /** The last revision the writer said it had kept before it died. */
    private int writeUntilKilled(Random random, int acknowledged) throws IOException, InterruptedException {
        Path said = root.resolve("said.txt");
        Files.deleteIfExists(said);
        Process writer = new ProcessBuilder(List.of(
                        Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                        "-XX:TieredStopAtLevel=1",
                        "-cp",
                        System.getProperty("java.class.path"),
                        Writer.class.getName(),
                        root.toString()))
                .redirectOutput(said.toFile())
                .redirectError(ProcessBuilder.Redirect.DISCARD)
                .start();
        int wanted = 1 + random.nextInt(12);
        while (writer.isAlive() && lines(said).size() < wanted) {
            TimeUnit.MILLISECONDS.sleep(2);
        }
        TimeUnit.MICROSECONDS.sleep(random.nextInt(3000));
        writer.destroyForcibly().waitFor();
        List<String> lines = lines(said);
        return lines.isEmpty() ? acknowledged : Integer.parseInt(lines.get(lines.size() - 1));
    }

    /** Whole lines only: the last may have been cut by the kill. */
    private static List<String> lines(Path said) throws IOException {
        String text = Files.exists(said) ? Files.readString(said) : "";
        return text.substring(0, text.lastIndexOf('\n') + 1).lines().toList();
    }

    private static String text(int revision) {
        return "revision " + revision + "\n" + LINE.repeat(400);
    }

    /** Keeps revision after revision and says each number once it is kept. */
    static final class Writer {
        private Writer() {}

        public static void main(String[] arguments) {
            PlanFolder plans = new PlanFolder(Path.of(arguments[0]));
            int revision = plans.newest("reef").map(PlanFolder.Kept::revision).orElse(0);
            Stream.iterate(
                            revision,
                            last -> plans.keep("reef", last, text(last + 1)).orElseThrow())
                    .skip(1)
                    .forEach(System.out::println);
        }
    }
}
