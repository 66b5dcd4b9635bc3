package org.tidewright.husbandry.mixing;

/** For whose sake a change is kept slow: the most delicate that live in the water. */
public enum Animals {
    FISH("fish"),
    CORALS("corals"),
    STONY_CORALS("small-polyped stony corals");

    private final String words;

    Animals(String words) {
        this.words = words;
    }

    /** Within a sentence. */
    public String words() {
        return words;
    }
}
