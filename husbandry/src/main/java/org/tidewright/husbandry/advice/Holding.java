package org.tidewright.husbandry.advice;

/** How a check came out. */
public enum Holding {
    /** It holds, by more than its doubt. */
    HOLDS("holds"),
    /** It holds, but the doubt reaches the limit. */
    CLOSE("close"),
    /** It does not hold. */
    FAILS("does not hold"),
    /** The program computes the number; somebody licensed decides. */
    ASK("ask");

    private final String words;

    Holding(String words) {
        this.words = words;
    }

    public String words() {
        return words;
    }
}
