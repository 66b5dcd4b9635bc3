package org.tidewright.husbandry.arrival.search;

/**
 * A rule that a schedule breaks.
 *
 * @param batch whose day it is that breaks it
 * @param other with which batch, or {@link #NOBODY}
 * @param day of the other batch or of the rule: until when a tank is taken, when the other goes into the display, when the
 *     month begins; 0 where the rule knows no day
 */
public record Broken(Rule rule, int batch, int other, int day) {
    /** No other batch has to do with it. */
    public static final int NOBODY = -1;

    /** What must hold. */
    public enum Rule {
        /** What has come already stays where it is since when. */
        HAPPENED,
        /** Nothing is bought before the first day, nor goes into the display before it. */
        START,
        /** A batch comes no sooner than it can be had. */
        SHOP,
        /** A batch goes into the display no sooner than the display is ready for it. */
        DISPLAY,
        /** It does so by the last day. */
        HORIZON,
        /** It stays its days in a tank. */
        QUARANTINE,
        /** The tank is free, */
        FREE,
        /** nobody is in it but those that come and go with it, */
        TAKEN,
        /** and it was dry for its days. */
        DRY,
        /** The tank holds all that share a stay, */
        ROOM,
        /** and they bear each other. */
        APART,
        /** Additions lie apart by their gap. */
        GAP,
        /** An addition is no more than the display takes. */
        PACE,
        /** What comes in a month costs no more than there is for it. */
        BUDGET,
        /** One goes into the display before another, by so many days, */
        ORDER,
        /** and the other does not without it. */
        NEEDED
    }
}
