package org.tidewright.app;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class TrainingStartTest {
    @TempDir
    Path folder = Path.of("");

    /** One that finds no address or no page gives up with exit code 1, and every later start stays slow. */
    @Test
    void findsThePagesAndEndsByItself() throws IOException, InterruptedException {
        Path said = folder.resolve("said.txt");
        Process start = new ProcessBuilder(List.of(
                        Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                        "-XX:TieredStopAtLevel=1",
                        "-cp",
                        System.getProperty("java.class.path"),
                        TrainingStart.class.getName()))
                .directory(folder.toFile())
                .redirectErrorStream(true)
                .redirectOutput(said.toFile())
                .start();
        assertThat(start.waitFor()).as(Files.readString(said)).isZero();
    }
}
