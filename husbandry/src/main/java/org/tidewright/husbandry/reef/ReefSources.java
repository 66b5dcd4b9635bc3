package org.tidewright.husbandry.reef;

import org.tidewright.husbandry.advice.Sources;
import org.tidewright.plan.source.Basis;

/** Where what is told of corals and their places comes from. */
final class ReefSources {
    private final Sources sources = new Sources();

    Sources all() {
        return sources;
    }

    String light(ReefSite site) {
        int points = site.light().map(LightField::points).orElse(0);
        if (points == 0) {
            return sources.key(
                    "Light by the plan’s lights",
                    Basis.COMPUTED,
                    "their stated or usual light as one even lamp as large as the tank, 20 cm over the water: configuration"
                            + " factor B-3 of Howell’s catalogue, Lambert’s law; where lamps hang the plan does not say. Right"
                            + " within a factor of two");
        }
        return sources.key(
                "Light measured at " + (points == 1 ? "1 point" : points + " points"),
                Basis.YOUR_PLAN,
                "and between them the plan’s lights, set right by Gaussian process regression with a length of 25 cm (Rasmussen"
                        + " and Williams 2006)");
    }

    String flow() {
        return sources.key(
                "Flow measured nearby",
                Basis.YOUR_PLAN,
                "told within some 15 cm of a measured point; elsewhere it is not known");
    }

    String needs(CoralTraits traits) {
        return traits.ofSpecies()
                ? sources.key(
                        "What each species needs",
                        Basis.COMMON_PRACTICE,
                        "light, flow and reach by the catalogue of species, which names its sources")
                : sources.key(
                        "What corals of its form need",
                        Basis.COMMON_PRACTICE,
                        "wide enough for the usual species of the form; flow classes as 1–6, 3–10, 5–18, 8–30 and 12–50 cm/s");
    }

    String gap() {
        return sources.key(
                "Gap between corals",
                Basis.COMMON_PRACTICE,
                "the longer reach, 5 cm, and what both grow in a year; extension on reefs from memory, half of it in a tank");
    }

    String calcification() {
        return sources.key(
                "Skeleton laid down over the area seen from above",
                Basis.PUBLISHED,
                "Courtney et al. 2021 and 2024, calcification rate files for ReefBudget (Perry and Lange); the two differ up to"
                        + " threefold");
    }

    String captivity(Captivity captivity) {
        return captivity.isFitted()
                ? sources.key(
                        "Growth here over growth on a reef",
                        captivity.basis(),
                        "found from the alkalinity that is used, over what the areas would use")
                : sources.key(
                        "Growth in a tank over growth on a reef",
                        Basis.COMMON_PRACTICE,
                        "half, 0.2 to 1; a guess until your log shows the use");
    }

    String crowding() {
        return sources.key(
                "Crowding",
                Basis.COMPUTED,
                "colonies that overlap at random cover A_max (1 − e^(−A/A_max)), A_max 0.6 of the floor, a guess");
    }
}
