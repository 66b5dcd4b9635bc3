package org.tidewright.plan.species;

/** What an animal may eat of those that live with it. */
public enum Prey {
    FISH("fish"),
    SMALL_FISH("small fish"),
    SHRIMP("shrimps"),
    SMALL_SHRIMP("small shrimps"),
    CRABS("crabs"),
    SNAILS("snails"),
    URCHINS("urchins"),
    STARS("sea stars"),
    WORMS("worms"),
    CLAMS("clams"),
    STONY_POLYPS("stony corals"),
    LARGE_POLYPS("fleshy corals"),
    SMALL_POLYPS("corals of small polyps"),
    SOFT_CORALS("soft corals"),
    ZOANTHIDS("zoanthids"),
    ANEMONES("anemones"),
    SPONGES("sponges"),
    FEATHER_WORMS("feather worms"),
    MICROFAUNA("the small animals of rock and sand"),
    PODS("copepods and amphipods"),
    ALGAE_FILM("films of algae");

    private final String words;

    Prey(String words) {
        this.words = words;
    }

    /** As a sentence says it. */
    public String words() {
        return words;
    }
}
