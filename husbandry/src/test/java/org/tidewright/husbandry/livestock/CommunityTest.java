package org.tidewright.husbandry.livestock;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.time.LocalDate;
import java.time.OffsetDateTime;
import java.time.ZoneId;
import java.util.List;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.tidewright.husbandry.TestPlans;
import org.tidewright.husbandry.journal.Event;
import org.tidewright.husbandry.journal.Line;
import org.tidewright.plan.model.Plan;
import org.tidewright.plan.species.Catalogue;

class CommunityTest {
    private static final ZoneId ZONE = ZoneId.of("Europe/Berlin");
    private static final LocalDate TODAY = LocalDate.of(2026, 11, 1);

    private static Line moved(String day, String animal, int count, Event.Move move, @Nullable Double length) {
        OffsetDateTime at = OffsetDateTime.parse(day + "T10:00:00+01:00");
        return new Line(
                UUID.randomUUID(),
                1,
                at,
                new Event.AnimalMoved(animal, count, move, length),
                "",
                false,
                at.toInstant());
    }

    private static Community of(Plan plan, Line... lines) {
        return Community.of(plan, List.of(lines), Catalogue.ofProgram(), TODAY, ZONE);
    }

    private static Plan plan(String fish) {
        return TestPlans.example(
                "window-nano",
                "    - {name: goby, mass: 3 g, count: 1}\n    - {name: clownfish, mass: 5 g, count: 2}\n",
                fish,
                "  coral_tissue",
                "  counted: 2026-05-01\n  coral_tissue");
    }

    @Test
    void thePlansFishAreThoseOfTheDayTheyWereCountedGrownSince() {
        Community community = of(plan("    - {name: tang, species: yellow tang, length: 6 cm, count: 1}\n"));
        assertThat(community.residents())
                .filteredOn(Animals::isFish)
                .singleElement()
                .satisfies(tang -> assertThat(tang.length()).isBetween(0.06, 0.0864));
    }

    @Test
    void arrivalsAndLossesAfterTheCountAreAddedAndTakenAway() {
        Community community = of(
                plan("    - {name: clowns, species: Amphiprion ocellaris, length: 6 cm, count: 2}\n"),
                moved("2026-04-01", "Chromis viridis", 7, Event.Move.ARRIVED, 0.04),
                moved("2026-06-01", "Gramma loreto", 1, Event.Move.ARRIVED, 0.05),
                moved("2026-07-01", "ocellaris clownfish", 1, Event.Move.DIED, null));
        assertThat(community.residents())
                .filteredOn(Animals::isFish)
                .extracting(each -> each.count() + " " + each.species().name().scientific())
                .containsExactlyInAnyOrder("1 Amphiprion ocellaris", "1 Gramma loreto");
    }

    @Test
    void whoIsNoKnownSpeciesIsToldAndNotGuessed() {
        Community community = of(plan("    - {name: my old fish, mass: 20 g, count: 1}\n"));
        assertThat(community.unknown()).contains("my old fish");
    }

    /** W = 0.0214 L^3.04 g (Morais and Bellwood 2018): 15.0 g is 8.64 cm. */
    @Test
    void aFishOfWhichOnlyTheMassIsKnownIsAsLongAsItsKindIs() {
        Community community = Community.of(
                plan("    - {name: tang, species: Zebrasoma flavescens, mass: 15 g, count: 1}\n"),
                List.of(),
                Catalogue.ofProgram(),
                LocalDate.of(2026, 5, 1),
                ZONE);
        assertThat(community.residents())
                .filteredOn(Animals::isFish)
                .singleElement()
                .satisfies(tang -> assertThat(tang.length()).isCloseTo(0.0864, within(2e-4)));
    }

    @Test
    void whoCameLatelyHasNotThrivedYetAndWhoDiedIsRemembered() {
        Community community = of(
                plan("    - {name: clowns, species: Amphiprion ocellaris, length: 6 cm, count: 2}\n"),
                moved("2026-01-10", "Chromis viridis", 2, Event.Move.DIED, null),
                moved("2025-01-10", "Zebrasoma flavescens", 1, Event.Move.DIED, null),
                moved("2026-10-20", "Gramma loreto", 1, Event.Move.ARRIVED, 0.05),
                moved("2026-06-20", "Elacatinus oceanops", 1, Event.Move.ARRIVED, 0.03));
        assertThat(community.experience().thriving())
                .filteredOn(Animals::isFish)
                .extracting(each -> each.species().name().scientific())
                .containsExactly("Amphiprion ocellaris");
        assertThat(community.experience().died())
                .extracting(each -> each.count() + " " + each.species().name().scientific())
                .containsExactly("2 Chromis viridis");
        assertThat(community.arrivals()).singleElement().satisfies(arrival -> {
            assertThat(arrival.day()).isEqualTo(LocalDate.of(2026, 10, 20));
            assertThat(arrival.fish().length()).isEqualTo(0.05);
        });
    }
}
