package org.tidewright.plan.species;

import java.util.List;

/** Columns that both files have. */
final class SharedColumns {
    private SharedColumns() {}

    static Species.Name name(SpeciesRow row) {
        return new Species.Name(row.needed("scientific_name"), row.needed("common_name"), row.list("synonyms"));
    }

    static Species.Fare fare(SpeciesRow row, double feedings) {
        return new Species.Fare(
                row.words("foods", FoodKind.class),
                feedings,
                row.words("eats", Prey.class),
                row.words("may_eat", Prey.class),
                row.source("diet_source", "foods", "eats", "may_eat"));
    }

    static Species.Danger danger(SpeciesRow row) {
        return new Species.Danger(
                row.words("hazard", Hazard.class),
                row.yes("poisons_tank"),
                row.source("hazard_source", "hazard", "poisons_tank"));
    }

    static Species.Warmth warmth(SpeciesRow row) {
        double least = row.number("temperature_least_c", -2, 40);
        double most = row.number("temperature_most_c", -2, 40);
        if (least >= most) {
            row.fault("temperature_least_c", row.text("temperature_least_c"), "less than temperature_most_c", "");
        }
        return new Species.Warmth(
                least, most, row.source("temperature_source", "temperature_least_c", "temperature_most_c"));
    }

    static Species.Care care(SpeciesRow row, int difficulty, String difficultyColumn, String bred) {
        List<String> after = row.list("after");
        return new Species.Care(
                row.whole("hardiness_1to5", 1, 5),
                row.whole("water_sensitivity_1to5", 1, 5),
                difficulty,
                row.numberOrNone("tank_age_least_months", 0, 120),
                after,
                row.word(bred, Species.Bred.class),
                row.text("trade"),
                row.source(
                        "care_source",
                        "hardiness_1to5",
                        "water_sensitivity_1to5",
                        difficultyColumn,
                        "tank_age_least_months",
                        "after"));
    }
}
