package org.tidewright.husbandry.reef;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.tidewright.husbandry.TestPlans;
import org.tidewright.husbandry.advice.Advice;
import org.tidewright.plan.model.UnitSystem;
import org.tidewright.plan.species.CoralForm;
import org.tidewright.testkit.SeededCases;

class PlacementWordsTest {
    private static final String LIT =
            "lights:\n  - {name: light bar, over: display, power: 150 W, daily: 10 h, par: 150 µmol/m²/s}\n";

    private static ReefSite site(String points, String corals) {
        return new ReefSite(
                ReefPlans.plan(LIT, points, corals.isEmpty() ? "" : "inhabitants:\n  corals:\n" + corals),
                CoralLore.BY_FORM);
    }

    private static String lead(ReefSite site) {
        return new PlacementWords(site).ofAll().lead().text(UnitSystem.METRIC).replace('\u00a0', ' ');
    }

    @Test
    void coralsThatSuitTheirPlacesStayWhereTheyStand() {
        ReefSite site = site("", """
                    - {name: toadstool, plan_area: 60 cm², form: soft, at: {x: 30 cm, y: 25 cm, height: 18 cm}}
                    - {name: finger leather, plan_area: 60 cm², form: soft, at: {x: 90 cm, y: 25 cm, height: 18 cm}}
                """);
        assertThat(lead(site))
                .isEqualTo(
                        "Leave the corals where they stand: nothing that is known of light, flow and neighbours speaks against"
                                + " the 2 whose place the plan tells.");
        assertThat(new PlacementWords(site).ofAll().cautions()).isEmpty();
    }

    /**
     * Radii of 5 cm, middles 31 cm apart: 21 cm between them where 20 of reach, 5 and half of 17.5 and 5 mm of growth do, 26.1.
     * In steps of 2 cm, 6 to the left are the shortest way for either.
     */
    @Test
    void theActComesFirstAndThenWhy() {
        ReefSite site = site("", """
                    - {name: torch, plan_area: 78.54 cm², form: euphyllia, at: {x: 40 cm, y: 25 cm, height: 18 cm}}
                    - {name: moon coral, plan_area: 78.54 cm², form: favites, at: {x: 71 cm, y: 25 cm, height: 18 cm}}
                """);
        assertThat(lead(site))
                .startsWith(
                        "Move the torch 6 cm to the left: there are 21 cm between the torch and the moon coral where 26");
    }

    @Test
    void aNeighbourInReachIsToldWithTheReach() {
        ReefSite site = site("", """
                    - {name: torch, plan_area: 78.54 cm², form: euphyllia, at: {x: 40 cm, y: 25 cm, height: 18 cm}}
                    - {name: moon coral, plan_area: 78.54 cm², form: favites, at: {x: 62 cm, y: 25 cm, height: 18 cm}}
                """);
        assertThat(lead(site))
                .startsWith("Move the ")
                .endsWith(
                        ": the torch reaches 20 cm beyond its edge, and there are 12 cm between the torch and the moon coral.");
        assertThat(new PlacementWords(site).ofAll().cautions()).anyMatch(caution -> caution.startsWith("Wear gloves"));
    }

    /** Once moved as advised it has nothing more to say of them. */
    @Test
    void afterTheMoveItStays() {
        SeededCases.check(25, draw -> {
            double x = draw.between(0.2, 0.6);
            Colony torch = new Colony("torch", 1, 0.05, FormTraits.of(CoralForm.EUPHYLLIA), new Place(x, 0.25, 0.18));
            ReefSite site = site("", """
                        - {name: moon coral, plan_area: 78.54 cm², form: favites, at: {x: 71 cm, y: 25 cm, height: 18 cm}}
                    """);
            Placement better =
                    Sites.nearest(site, torch, new Place(x, 0.25, 0.18)).orElseThrow();
            assertThat(better.isGood()).isTrue();
            assertThat(site.placement(better.colony()).trouble()).isZero();
        });
    }

    @Test
    void aPlaceSurelyTooDarkIsLeftForABrighterOne() {
        Place deep = new Place(0.1, 0.1, 0.02);
        String measured = "  light_points:\n" + ReefPlans.lightPoint(deep, 40e-6)
                + ReefPlans.lightPoint(new Place(0.6, 0.25, 0.34), 300e-6);
        ReefSite site = site(measured, """
                    - {name: staghorn, plan_area: 30 cm², form: branching_acropora, at: {x: 10 cm, y: 10 cm, height: 2 cm}}
                """);
        assertThat(lead(site))
                .startsWith("Move the staghorn ")
                .contains(" up: the light there, 40")
                .contains("is less than the 200 to 450 µmol/m²/s it needs.");
    }

    @Test
    void whatIsOnlyComputedIsMeasuredBeforeAnythingIsMoved() {
        ReefSite site = site("", """
                    - {name: staghorn, plan_area: 30 cm², form: branching_acropora, at: {x: 60 cm, y: 25 cm, height: 12 cm}}
                """);
        assertThat(lead(site)).startsWith("Measure at the staghorn before you move it: the light there, ");
    }

    @Test
    void withoutPlacesTheKeeperIsAskedForThem() {
        assertThat(lead(site("", "    - {name: leathers, plan_area: 60 cm², form: soft}\n")))
                .startsWith("Say where your corals stand");
        assertThat(lead(site("", ""))).startsWith("Try a place below before you buy");
    }

    @Test
    void suggestedPlacesSuitAndStandApart() {
        ReefSite site = new ReefSite(TestPlans.example("harbour-room"), CoralLore.BY_FORM);
        Colony candidate = new Colony("new plate", 1, 0.04, FormTraits.of(CoralForm.PLATING_MONTIPORA), null);
        List<Placement> suggested = Sites.suggested(site, candidate, 3);
        assertThat(suggested).hasSize(3).allMatch(Placement::isGood);
        for (Placement each : suggested) {
            for (Placement other : suggested) {
                if (!each.equals(other)) {
                    assertThat(each.place().from(other.place())).isGreaterThan(0.15);
                }
            }
            assertThat(each.place().height()).isBetween(site.sandHeight(), site.rockTop());
        }
        assertThat(Sites.comfort(suggested.get(0))).isGreaterThanOrEqualTo(Sites.comfort(suggested.get(2)));
    }

    @Test
    void aCandidatesVerdictOpensTheAnswer() {
        ReefSite site = new ReefSite(TestPlans.example("harbour-room"), CoralLore.BY_FORM);
        Colony torch = new Colony("second torch", 1, 0.04, FormTraits.of(CoralForm.EUPHYLLIA), null);
        PlacementWords words = new PlacementWords(site);
        Advice among = words.candidate(site.at(torch, new Place(0.25, 0.34, 0.12)), List.of());
        assertThat(among.lead().text(UnitSystem.METRIC))
                .startsWith("Do not put it there: the second torch reaches 20")
                .endsWith("No free place here is known to suit it.");
        assertThat(among.figures()).extracting(Advice.Told::name).containsExactly("Light there", "Flow there");
    }

    @Test
    void theExampleRoomHasATorchThatReachesItsNeighbour() {
        String lead = lead(new ReefSite(TestPlans.example("harbour-room"), CoralLore.BY_FORM));
        assertThat(lead).startsWith("Move the ").contains("reaches 20 cm beyond its edge");
    }

    @Test
    void aWayIsToldToEachSideInTheReadersUnits() {
        assertThat(PlacementWords.way(new Place(0.5, 0.2, 0.1), new Place(0.42, 0.24, 0.04))
                        .text(UnitSystem.METRIC)
                        .replace('\u00a0', ' '))
                .isEqualTo("8 cm to the left, 4 cm to the back and 6 cm down");
        assertThat(PlacementWords.way(new Place(0.5, 0.2, 0.1), new Place(0.5, 0.1, 0.1))
                        .text(UnitSystem.US)
                        .replace('\u00a0', ' '))
                .isEqualTo("3.9 in to the front");
    }

    @Test
    void sandLiesAsHighAsItsMassAllows() {
        // 40 kg in bulk of 1500 kg/m^3 over 1.5 by 0.6 m.
        assertThat(new ReefSite(TestPlans.example("harbour-room"), CoralLore.BY_FORM).sandHeight())
                .isCloseTo(40 / 1500.0 / 0.9, within(1e-12));
    }

    @Test
    void speciesThatAreKnownReplaceTheirForm() {
        CoralTraits known = new CoralTraits(
                "Euphyllia glabrescens",
                true,
                Ranged.between(80e-6, 200e-6),
                FlowClass.LOW,
                0.25,
                Set.of(),
                Ranged.between(0.01, 0.02),
                Ranged.exactly(1e-8),
                false);
        CoralLore lore = species -> species.equals("Euphyllia glabrescens") ? Optional.of(known) : Optional.empty();
        List<Colony> colonies = Colony.of(TestPlans.example("harbour-room"), lore);
        assertThat(colonies)
                .filteredOn(colony -> colony.traits().ofSpecies())
                .singleElement()
                .satisfies(torch -> assertThat(torch.traits().reach()).isEqualTo(0.25));
        assertThat(colonies.get(8).number()).isEqualTo(3);
        assertThat(colonies.get(8).radius()).isCloseTo(Math.sqrt(0.01 / Math.PI), within(1e-12));
    }
}
