package org.tidewright.plan.species;

/** What a keeper has to give an animal. */
public enum FoodKind {
    ALGAE("algae"),
    PLANKTON("plankton"),
    PHYTOPLANKTON("phytoplankton"),
    MEATY("meaty food"),
    LIVE_FOOD("live food"),
    LIVE_MICROFAUNA("small live animals from rock and sand"),
    POLYPS("coral polyps"),
    SPONGES("sponges"),
    PARASITES("parasites of other fish"),
    /** One kind of animal that nobody means to keep. */
    PEST("one pest"),
    DETRITUS("detritus"),
    FILM("films of algae"),
    DISSOLVED("what is dissolved in the water");

    private final String words;

    FoodKind(String words) {
        this.words = words;
    }

    /** As a sentence says it. */
    public String words() {
        return words;
    }
}
