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

    /** 90 of 100 draws lie within this many standard errors. */
    private static final double WITHIN_DOUBT = 1.645;

    private final String words;

    Holding(String words) {
        this.words = words;
    }

    /** A margin, positive on the safe side, judged against its standard error. */
    public static Holding of(double margin, double standardError) {
        if (margin < 0) {
            return FAILS;
        }
        return margin > WITHIN_DOUBT * standardError ? HOLDS : CLOSE;
    }

    public String words() {
        return words;
    }
}
