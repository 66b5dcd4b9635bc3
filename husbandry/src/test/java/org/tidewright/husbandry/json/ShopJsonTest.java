package org.tidewright.husbandry.json;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.time.OffsetDateTime;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.tidewright.husbandry.TestPlans;
import org.tidewright.husbandry.livestock.Animals;
import org.tidewright.husbandry.livestock.Candidates;
import org.tidewright.husbandry.livestock.Home;
import org.tidewright.husbandry.livestock.Homes;
import org.tidewright.husbandry.livestock.Setting;
import org.tidewright.husbandry.livestock.Verdict;
import org.tidewright.husbandry.shop.ShopAnimal;
import org.tidewright.plan.model.UnitSystem;
import org.tidewright.plan.species.Catalogue;
import org.tidewright.plan.species.Species;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

class ShopJsonTest {
    private static final List<Species> ALL = Catalogue.ofProgram().all();
    private static final LocalDate TODAY = LocalDate.of(2026, 11, 28);
    private static final Home HOME = Homes.of(TestPlans.example("window-nano"), 14.0, null);
    private static final List<Animals> RESIDENTS =
            List.of(Candidates.read("2 ocellaris clownfish 7 cm", Catalogue.ofProgram()));

    private static String text(UnitSystem units) {
        return ShopJson.text(
                "window-nano",
                OffsetDateTime.parse("2026-11-28T14:05:00.123+01:00"),
                ShopAnimal.judge(ALL, Setting.of(TODAY, HOME, RESIDENTS), units),
                units);
    }

    private static JsonNode animal(JsonNode root, String species) {
        for (JsonNode animal : root.get("animals")) {
            if (animal.get("species").asString().equals(species)) {
                return animal;
            }
        }
        throw new AssertionError(species);
    }

    @Test
    void everySpeciesIsJudgedAsThePageLifeWouldJudgeIt() {
        JsonNode root = JsonMapper.shared().readTree(text(UnitSystem.METRIC));
        assertThat(root.get("animals")).hasSameSizeAs(ALL);
        assertThat(root.get("as_of").asString()).isEqualTo("2026-11-28T14:05:00+01:00");
        for (Species species : ALL) {
            String name = species.name().scientific();
            Verdict verdict =
                    Verdict.of(Candidates.read(name, Catalogue.ofProgram()), Setting.of(TODAY, HOME, RESIDENTS), null);
            JsonNode animal = animal(root, name);
            assertThat(animal.get("verdict").asString())
                    .as(name)
                    .isEqualTo(verdict.call().verdict());
            assertThat(animal.get("lead").asString())
                    .as(name)
                    .isEqualTo(verdict.lead().text(UnitSystem.METRIC));
        }
    }

    @Test
    void severalOfAKindAreNamedAsOneSpeaks() {
        List<Animals> angel = List.of(Candidates.read("coral beauty angelfish 8 cm", Catalogue.ofProgram()));
        assertThat(ShopAnimal.judge(ALL, Setting.of(TODAY, HOME, angel), UnitSystem.METRIC))
                .flatExtracting(ShopAnimal::reasons)
                .extracting(ShopAnimal.Reason::sentence)
                .contains("The coral beauty angelfish may eat such stony corals of large polyps.")
                .noneMatch(sentence -> sentence.contains("ss.") || sentence.contains("symbiontss"));
    }

    @Test
    void cautionsAreToldOnceAndMeantByTheirKey() {
        JsonNode root = JsonMapper.shared().readTree(text(UnitSystem.METRIC));
        assertThat(root.get("cautions").size()).isLessThan(40);
        JsonNode tang = animal(root, "Zebrasoma flavescens");
        assertThat(tang.get("cautions"))
                .extracting(key -> root.get("cautions").get(key.asString()).asString())
                .anyMatch(caution -> caution.contains("blade on each side of the tail"))
                .anyMatch(caution -> caution.startsWith("Quarantine it first"));
    }

    @Test
    void numbersAreMetricWithTheirUnitAndSentencesInTheReadersUnits() {
        JsonNode metric = JsonMapper.shared().readTree(text(UnitSystem.METRIC));
        JsonNode us = JsonMapper.shared().readTree(text(UnitSystem.US));
        assertThat(UnitNames.check(metric)).isGreaterThan(ALL.size());
        JsonNode tang = animal(us, "Zebrasoma flavescens");
        assertThat(tang.get("length_cm"))
                .isEqualTo(animal(metric, "Zebrasoma flavescens").get("length_cm"));
        assertThat(tang.get("size").asString()).contains("\u00a0in,");
        assertThat(us.get("units").asString()).isEqualTo("us");
    }

    @Test
    void staysSmallEnoughForAPhone() {
        assertThat(text(UnitSystem.METRIC)).hasSizeLessThan(600_000).doesNotContain("\n");
    }
}
