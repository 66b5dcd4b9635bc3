package org.tidewright.husbandry.reef;

/** How a place answers one need of a coral. */
public enum Suits {
    YES,
    /** The middle of what is known lies outside the need, the ends do not. */
    PERHAPS_TOO_LITTLE,
    PERHAPS_TOO_MUCH,
    TOO_LITTLE,
    TOO_MUCH,
    /** Nothing is known of the place, or of the need. */
    NOT_KNOWN;

    static Suits of(PointValue there, double least, double most) {
        if (there.high() < least) {
            return TOO_LITTLE;
        } else if (there.low() > most) {
            return TOO_MUCH;
        } else if (there.value() < least) {
            return PERHAPS_TOO_LITTLE;
        }
        return there.value() > most ? PERHAPS_TOO_MUCH : YES;
    }

    /** Whether the place surely does not suit. */
    public boolean isWrong() {
        return this == TOO_LITTLE || this == TOO_MUCH;
    }

    /** Whether the likeliest value suits, or nothing is known against it. */
    public boolean mayStay() {
        return this == YES || this == NOT_KNOWN;
    }
}
