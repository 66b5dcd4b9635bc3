package org.tidewright.plan.species;

/** How many of a kind are kept together. */
public enum SocialForm {
    SINGLE("single"),
    PAIR("a pair"),
    /** One male with several females. */
    HAREM("one male with several females"),
    GROUP("a group");

    private final String words;

    SocialForm(String words) {
        this.words = words;
    }

    /** As a sentence says it. */
    public String words() {
        return words;
    }
}
