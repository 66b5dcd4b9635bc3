package org.tidewright.app.plans;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class PlanFolderTest {
    @TempDir
    Path root = Path.of("");

    @Test
    void aTextIsKeptAsTheNextRevisionAndOlderOnesStay() throws IOException {
        PlanFolder plans = new PlanFolder(root);
        assertThat(plans.keep("reef", 0, "first")).contains(1);
        assertThat(plans.keep("reef", 1, "second")).contains(2);
        assertThat(plans.newest("reef")).contains(new PlanFolder.Kept("reef", 2, "second"));
        assertThat(root.resolve("reef/revision-0001.yaml")).hasContent("first");
        assertThat(plans.ids()).containsExactly("reef");
    }

    @Test
    void whoBeganFromAnOlderRevisionIsToldSo() {
        PlanFolder plans = new PlanFolder(root);
        plans.keep("reef", 0, "first");
        plans.keep("reef", 1, "second");
        assertThat(plans.keep("reef", 1, "too late")).isEmpty();
        assertThat(plans.newest("reef").orElseThrow().text()).isEqualTo("second");
    }

    @Test
    void ofManyWritersAtOnceOneWins() {
        PlanFolder plans = new PlanFolder(root);
        plans.keep("reef", 0, "first");
        List<Optional<Integer>> results = IntStream.range(0, 40)
                .parallel()
                .mapToObj(i -> plans.keep("reef", 1, "writer " + i))
                .toList();
        assertThat(results.stream().filter(Optional::isPresent)).hasSize(1);
        assertThat(plans.newest("reef").orElseThrow().revision()).isEqualTo(2);
    }

    @Test
    void nothingHalfWrittenIsLeftBehind() throws IOException {
        PlanFolder plans = new PlanFolder(root);
        plans.keep("reef", 0, "first");
        plans.keep("reef", 0, "late");
        try (Stream<Path> files = Files.list(root.resolve("reef"))) {
            assertThat(files.map(file -> file.getFileName().toString())).containsExactly("revision-0001.yaml");
        }
    }

    @Test
    void namesThatLeaveTheFolderAreNoSystems() {
        PlanFolder plans = new PlanFolder(root);
        for (String name : List.of("..", "../x", "a/b", "", "A", "a b", "a".repeat(200))) {
            assertThat(plans.newest(name)).as(name).isEmpty();
            assertThatThrownBy(() -> plans.keep(name, 0, "text")).isInstanceOf(IllegalArgumentException.class);
        }
    }

    @Test
    void everyNameMakesAFolderName() {
        assertThat(PlanFolder.idFor("Harbour room")).isEqualTo("harbour-room");
        assertThat(PlanFolder.idFor("  Riff № 3! ")).isEqualTo("riff-3");
        assertThat(PlanFolder.idFor("サンゴ")).isEqualTo("system");
        assertThat(PlanFolder.idFor("x".repeat(200))).hasSize(60);
    }
}
