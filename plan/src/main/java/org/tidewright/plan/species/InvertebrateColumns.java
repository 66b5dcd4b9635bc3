package org.tidewright.plan.species;

import java.util.LinkedHashSet;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** The columns of {@code invertebrates.csv}, and an invertebrate from a row of them. */
final class InvertebrateColumns {
    /** In the order of the file. */
    static final List<String> ALL = List.of(
            "scientific_name",
            "common_name",
            "synonyms",
            "group",
            "region",
            "max_size_cm",
            "size_source",
            "light_least_umol",
            "light_most_umol",
            "flow",
            "place_source",
            "alkalinity_sensitivity_1to5",
            "reach_cm",
            "sting_0to3",
            "chemical_0to3",
            "immune_to",
            "reach_source",
            "extension_low_mm_per_year",
            "extension_high_mm_per_year",
            "extension_source",
            "calcification_mg_per_cm2_d",
            "calcification_low_mg_per_cm2_d",
            "calcification_high_mg_per_cm2_d",
            "calcification_source",
            "form",
            "foods",
            "feeds_a_week",
            "eats",
            "may_eat",
            "diet_source",
            "motility_0to3",
            "sand_least_cm",
            "social",
            "troubles",
            "temper_source",
            "hazard",
            "poisons_tank",
            "hazard_source",
            "temperature_least_c",
            "temperature_most_c",
            "temperature_source",
            "hardiness_1to5",
            "water_sensitivity_1to5",
            "difficulty_0to6",
            "tank_age_least_months",
            "after",
            "captive_grown",
            "trade",
            "care_source",
            "notes");

    private static final double CENTIMETRE = 1e-2;
    private static final double MILLIMETRE = 1e-3;
    private static final double MICROMOLE = 1e-6;
    private static final double WEEK = 7;

    /** mg/cm² in kg/m². */
    private static final double OF_AREA = 1e-2;

    private InvertebrateColumns() {}

    static InvertebrateSpecies invertebrate(SpeciesRow row) {
        return new InvertebrateSpecies(
                SharedColumns.name(row),
                row.word("group", InvertebrateSpecies.Group.class),
                row.needed("region"),
                extent(row),
                place(row),
                contest(row),
                extension(row),
                skeleton(row),
                row.wordOrNone("form", CoralForm.class),
                SharedColumns.fare(row, row.number("feeds_a_week", 0, 100) / WEEK),
                new InvertebrateSpecies.Temper(
                        row.whole("motility_0to3", 0, 3),
                        row.isEmpty("sand_least_cm") ? 0 : row.number("sand_least_cm", 0, 50) * CENTIMETRE,
                        row.words("social", SocialForm.class),
                        row.words("troubles", Trouble.class),
                        row.source("temper_source", "motility_0to3", "sand_least_cm", "social", "troubles")),
                SharedColumns.danger(row),
                SharedColumns.warmth(row),
                SharedColumns.care(row, row.whole("difficulty_0to6", 0, 6), "difficulty_0to6", "captive_grown"),
                row.text("notes"));
    }

    private static InvertebrateSpecies.@Nullable Extent extent(SpeciesRow row) {
        return row.isEmpty("max_size_cm")
                ? null
                : new InvertebrateSpecies.Extent(
                        row.number("max_size_cm", 0.1, 1000) * CENTIMETRE, row.source("size_source", "max_size_cm"));
    }

    private static InvertebrateSpecies.@Nullable Place place(SpeciesRow row) {
        if (row.isEmpty("light_least_umol") && row.isEmpty("light_most_umol")) {
            return null;
        }
        double least = row.number("light_least_umol", 0, 3000);
        double most = row.number("light_most_umol", 0, 3000);
        if (least >= most) {
            row.fault("light_least_umol", row.text("light_least_umol"), "less than light_most_umol", "");
        }
        return new InvertebrateSpecies.Place(
                least * MICROMOLE,
                most * MICROMOLE,
                row.word("flow", InvertebrateSpecies.Flow.class),
                row.source("place_source", "light_least_umol", "light_most_umol", "flow"));
    }

    private static InvertebrateSpecies.Contest contest(SpeciesRow row) {
        return new InvertebrateSpecies.Contest(
                row.isEmpty("reach_cm") ? 0 : row.number("reach_cm", 0, 100) * CENTIMETRE,
                row.isEmpty("sting_0to3") ? 0 : row.whole("sting_0to3", 0, 3),
                row.isEmpty("chemical_0to3") ? 0 : row.whole("chemical_0to3", 0, 3),
                new LinkedHashSet<>(row.list("immune_to")),
                row.whole("alkalinity_sensitivity_1to5", 1, 5),
                row.source("reach_source", "reach_cm", "sting_0to3", "chemical_0to3", "immune_to"));
    }

    private static InvertebrateSpecies.@Nullable Extension extension(SpeciesRow row) {
        if (row.isEmpty("extension_low_mm_per_year") && row.isEmpty("extension_high_mm_per_year")) {
            return null;
        }
        return new InvertebrateSpecies.Extension(
                row.number("extension_low_mm_per_year", 0, 500) * MILLIMETRE,
                row.number("extension_high_mm_per_year", 0, 500) * MILLIMETRE,
                row.source("extension_source", "extension_low_mm_per_year", "extension_high_mm_per_year"));
    }

    private static InvertebrateSpecies.@Nullable Skeleton skeleton(SpeciesRow row) {
        if (row.isEmpty("calcification_mg_per_cm2_d")) {
            return null;
        }
        return new InvertebrateSpecies.Skeleton(
                row.number("calcification_mg_per_cm2_d", 0, 50) * OF_AREA,
                row.number("calcification_low_mg_per_cm2_d", 0, 50) * OF_AREA,
                row.number("calcification_high_mg_per_cm2_d", 0, 50) * OF_AREA,
                row.source(
                        "calcification_source",
                        "calcification_mg_per_cm2_d",
                        "calcification_low_mg_per_cm2_d",
                        "calcification_high_mg_per_cm2_d"));
    }
}
