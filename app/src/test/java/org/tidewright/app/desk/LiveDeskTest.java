package org.tidewright.app.desk;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.tidewright.app.folder.KeptFolder;
import org.tidewright.app.plans.PlanFolder;
import org.tidewright.husbandry.burden.Burden;
import org.tidewright.husbandry.livestock.Animals;
import org.tidewright.husbandry.livestock.Community;
import org.tidewright.plan.Examples;
import org.tidewright.plan.model.Plan;
import org.tidewright.plan.species.Catalogue;
import org.tidewright.web.desk.SaveResult;
import org.tidewright.web.desk.WaterSoon;

class LiveDeskTest {
    @TempDir
    Path root = Path.of("");

    private @Nullable KeptFolder kept;

    private LiveDesk desk(PlanFolder plans) {
        kept = new KeptFolder(plans.root(), Clock.systemUTC());
        return new LiveDesk(kept, Clock.systemUTC());
    }

    @AfterEach
    void close() {
        if (kept != null) {
            kept.close();
        }
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

    @Test
    void theTwinAnswersOfACandidateSoonerOrLater() {
        PlanFolder plans = new PlanFolder(root);
        plans.keep("nano", 0, Examples.text("window-nano"));
        LiveDesk desk = desk(plans);
        Catalogue catalogue = Catalogue.ofProgram();
        Plan plan = desk.system("nano").orElseThrow().plan();
        Community community = Community.of(plan, List.of(), catalogue, LocalDate.of(2026, 11, 1), ZoneOffset.UTC);
        Animals gramma = new Animals(catalogue.find("Gramma loreto").orElseThrow(), 1, 0.04);
        WaterSoon water;
        Optional<Burden> burden;
        int asked = 0;
        do {
            water = desk.waterWith(plan, community);
            burden = water.with(gramma, List.of());
            assertThat(burden.isPresent()).isNotEqualTo(water.isLate());
        } while (water.isLate() && ++asked < 100);
        assertThat(burden).isPresent();
    }
}
