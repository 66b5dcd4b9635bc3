package org.tidewright.husbandry.livestock;

import java.util.Locale;

/** What a finding, or all together, say to an animal; from the best to the worst. */
public enum Call {
    /** It holds. */
    YES("yes"),
    /** It may come, and there is something to mind. */
    MIND("yes, mind this"),
    /** Later, or after something is done. */
    NOT_YET("not yet"),
    NO("no");

    private final String words;

    Call(String words) {
        this.words = words;
    }

    /** As a page says it. */
    public String words() {
        return words;
    }

    /** As programs read it: {@code yes}, {@code not_yet}, {@code no}. */
    public String verdict() {
        return this == MIND ? YES.verdict() : name().toLowerCase(Locale.ROOT);
    }

    public Call worse(Call other) {
        return compareTo(other) >= 0 ? this : other;
    }
}
