package org.tidewright.app.desk;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.tidewright.app.plans.PlanFolder;
import org.tidewright.plan.Examples;
import org.tidewright.web.desk.SaveResult;

class LiveDeskTest {
    @TempDir
    Path root = Path.of("");

    private static LiveDesk desk(PlanFolder plans) {
        return new LiveDesk(
                plans,
                () -> {
                    throw new AssertionError("no line of a journal is asked for here");
                },
                () -> {
                    throw new AssertionError("no probe is asked for here");
                },
                Clock.systemUTC());
    }

    @Test
    void aFaultyTextIsNotKept() {
        PlanFolder plans = new PlanFolder(root);
        plans.keep("nano", 0, Examples.text("window-nano"));
        LiveDesk desk = desk(plans);
        SaveResult result = desk.save("nano", 1, Examples.text("window-nano").replace("60 cm", "60 parsec"));
        assertThat(result).isInstanceOf(SaveResult.Faulty.class);
        assertThat(plans.newest("nano").orElseThrow().revision()).isEqualTo(1);
    }

    @Test
    void aConflictGivesTheTextThatStands() {
        PlanFolder plans = new PlanFolder(root);
        plans.keep("nano", 0, Examples.text("window-nano"));
        LiveDesk desk = desk(plans);
        String taller = Examples.text("window-nano").replace("height: 36 cm", "height: 40 cm");
        assertThat(desk.save("nano", 1, taller)).isEqualTo(new SaveResult.Saved(2));
        assertThat(desk.save("nano", 1, Examples.text("window-nano"))).isEqualTo(new SaveResult.Conflict(2, taller));
    }

    @Test
    void aRevisionSpoiltByHandHidesOnlyItsOwnSystem() throws IOException {
        PlanFolder plans = new PlanFolder(root);
        plans.keep("nano", 0, Examples.text("window-nano"));
        plans.keep("harbour", 0, Examples.text("harbour-room"));
        Files.writeString(root.resolve("nano/revision-0002.yaml"), "not: a plan");
        LiveDesk desk = desk(plans);
        assertThat(desk.systems())
                .singleElement()
                .satisfies(entry -> assertThat(entry.id()).isEqualTo("harbour"));
    }

    @Test
    void theSystemsWaterIsThatOfItsRunningState() {
        PlanFolder plans = new PlanFolder(root);
        plans.keep("nano", 0, Examples.text("window-nano"));
        // 60 × 35 × 33 cm less 9 kg of rock at 0.42 L/kg and 6 kg of sand at 2.8 kg/L, worked by hand.
        double litres = 69.3 - 3.78 - 2.1429;
        assertThat(desk(plans).systems().get(0).water() * 1000)
                .isCloseTo(litres, org.assertj.core.api.Assertions.within(0.001));
    }
}
