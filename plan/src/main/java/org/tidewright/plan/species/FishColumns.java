package org.tidewright.plan.species;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/** The columns of {@code fish.csv}, and a fish from a row of them. */
final class FishColumns {
    /** In the order of the file. */
    static final List<String> ALL = List.of(
            "scientific_name",
            "common_name",
            "synonyms",
            "family",
            "region",
            "max_length_cm",
            "usual_length_cm",
            "length_source",
            "asymptote_cm",
            "growth_per_year",
            "growth_source",
            "weight_a_g",
            "weight_b",
            "weight_source",
            "body_depth_share",
            "prey_depth_share",
            "gape_source",
            "diet",
            "foods",
            "feeds_a_day",
            "eats",
            "may_eat",
            "diet_source",
            "temperament_1to5",
            "territory_0to3",
            "troubles",
            "shape",
            "look",
            "temper_source",
            "social",
            "group_least",
            "social_source",
            "swimming",
            "tank_length_least_cm",
            "tank_volume_least_l",
            "zone",
            "space_source",
            "jump_0to3",
            "night",
            "sand_least_cm",
            "digs",
            "hazard",
            "poisons_tank",
            "hazard_source",
            "temperature_least_c",
            "temperature_most_c",
            "temperature_source",
            "hardiness_1to5",
            "water_sensitivity_1to5",
            "difficulty_1to6",
            "tank_age_least_months",
            "after",
            "captive_bred",
            "trade",
            "care_source",
            "notes");

    private static final double CENTIMETRE = 1e-2;
    private static final double LITRE = 1e-3;
    private static final double LONGEST = 2000;

    private FishColumns() {}

    static FishSpecies fish(SpeciesRow row) {
        return new FishSpecies(
                SharedColumns.name(row),
                row.needed("family"),
                row.needed("region"),
                size(row),
                growth(row),
                new FishSpecies.Weight(
                        row.number("weight_a_g", 1e-4, 1),
                        row.number("weight_b", 2, 4),
                        row.source("weight_source", "weight_a_g", "weight_b")),
                new FishSpecies.Gape(
                        row.number("body_depth_share", 0.005, 1.2),
                        row.number("prey_depth_share", 0.001, 1),
                        row.source("gape_source", "body_depth_share", "prey_depth_share")),
                row.word("diet", FishSpecies.Diet.class),
                SharedColumns.fare(row, row.number("feeds_a_day", 0, 24)),
                temper(row),
                company(row),
                space(row),
                SharedColumns.danger(row),
                SharedColumns.warmth(row),
                SharedColumns.care(row, row.whole("difficulty_1to6", 1, 6), "difficulty_1to6", "captive_bred"),
                row.text("notes"));
    }

    private static FishSpecies.Size size(SpeciesRow row) {
        double most = row.number("max_length_cm", 0.5, LONGEST);
        double usual = row.number("usual_length_cm", 0.5, LONGEST);
        if (usual > most) {
            row.fault("usual_length_cm", row.text("usual_length_cm"), "no more than max_length_cm", "");
        }
        return new FishSpecies.Size(
                most * CENTIMETRE, usual * CENTIMETRE, row.source("length_source", "max_length_cm", "usual_length_cm"));
    }

    private static FishSpecies.@Nullable Growth growth(SpeciesRow row) {
        if (row.isEmpty("asymptote_cm") && row.isEmpty("growth_per_year")) {
            return null;
        }
        return new FishSpecies.Growth(
                row.number("asymptote_cm", 0.5, LONGEST) * CENTIMETRE,
                row.number("growth_per_year", 0.01, 20),
                row.source("growth_source", "asymptote_cm", "growth_per_year"));
    }

    private static FishSpecies.Temper temper(SpeciesRow row) {
        return new FishSpecies.Temper(
                row.whole("temperament_1to5", 1, 5),
                row.whole("territory_0to3", 0, 3),
                row.words("troubles", Trouble.class),
                row.word("shape", FishSpecies.Shape.class),
                new LinkedHashSet<>(row.list("look")),
                row.source("temper_source", "temperament_1to5", "territory_0to3", "troubles", "shape", "look"));
    }

    private static FishSpecies.Company company(SpeciesRow row) {
        Set<SocialForm> forms = row.words("social", SocialForm.class);
        if (forms.isEmpty()) {
            row.fault("social", "nothing", "one or more of single, pair, harem, group", "");
        }
        return new FishSpecies.Company(
                forms,
                row.isEmpty("group_least") ? 1 : row.whole("group_least", 1, 100),
                row.source("social_source", "social", "group_least"));
    }

    private static FishSpecies.Space space(SpeciesRow row) {
        return new FishSpecies.Space(
                row.word("swimming", FishSpecies.Swimming.class),
                row.number("tank_length_least_cm", 10, LONGEST) * CENTIMETRE,
                row.number("tank_volume_least_l", 5, 1e6) * LITRE,
                row.word("zone", FishSpecies.Zone.class),
                row.whole("jump_0to3", 0, 3),
                row.word("night", FishSpecies.Night.class),
                row.isEmpty("sand_least_cm") ? 0 : row.number("sand_least_cm", 0, 50) * CENTIMETRE,
                row.yes("digs"),
                row.source(
                        "space_source",
                        "swimming",
                        "tank_length_least_cm",
                        "tank_volume_least_l",
                        "zone",
                        "jump_0to3"));
    }
}
