package org.tidewright.husbandry.reef;

import static java.util.Objects.requireNonNull;

import org.tidewright.seawater.unit.Unit;
import org.tidewright.twin.law.carbonate.Calcification;

/**
 * Two colonies and the gap between their edges. It should be as wide as the longer of the two reaches, and 5 cm, and what
 * both will grow towards each other in a year; common practice. Corals that may touch need none.
 *
 * @param gap from edge to edge, as the crow flies; negative where one stands in the other
 * @param reach the longer of the two
 * @param growth of both edges together, a year
 * @param mayTouch whether neither stings the other
 */
public record Neighbours(
        Colony one,
        Colony other,
        @Unit("m") double gap,
        @Unit("m") double reach,
        @Unit("m/y") double growth,
        boolean mayTouch) {
    /** Between what the stingers reach and the neighbour; common practice. */
    @Unit("m")
    public static final double SPARE = 0.05;

    /** Nobody measures a gap to less than a centimetre. */
    private static final double TELLING = 0.01;

    /** How two colonies stand to each other. */
    public enum Standing {
        /** One grows into the other. */
        TOUCHING,
        /** One can be stung now. */
        IN_REACH,
        /** There is less than the reach and 5 cm. */
        CLOSE,
        /** They come close within a year. */
        GROWING_CLOSE,
        /** Far enough apart, or corals that may touch. */
        APART
    }

    /** Of two colonies whose places are known. */
    public static Neighbours of(Colony one, Colony other) {
        Place here = requireNonNull(one.place(), "the place of a colony");
        Place there = requireNonNull(other.place(), "the place of a colony");
        double beside = here.beside(there) - one.radius() - other.radius();
        double over = Math.abs(here.height() - there.height());
        double gap = over == 0 ? beside : Math.hypot(Math.max(0, beside), over);
        return new Neighbours(
                one,
                other,
                gap,
                Math.max(one.traits().reach(), other.traits().reach()),
                Calcification.CAPTIVITY_USUAL
                        * (one.traits().extension().value()
                                + other.traits().extension().value()),
                one.traits().mayTouch(other.traits()));
    }

    /** Gap that keeps them apart for a year. */
    public @Unit("m") double needed() {
        return mayTouch ? 0 : reach + SPARE + growth;
    }

    /** Gap there is beyond what is needed; negative where it is missing. */
    public @Unit("m") double spare() {
        return mayTouch ? Double.POSITIVE_INFINITY : gap - needed();
    }

    public Standing standing() {
        if (mayTouch) {
            return Standing.APART;
        } else if (gap <= 0) {
            return Standing.TOUCHING;
        } else if (gap <= reach) {
            return Standing.IN_REACH;
        } else if (gap < reach + SPARE) {
            return Standing.CLOSE;
        }
        return spare() < -TELLING ? Standing.GROWING_CLOSE : Standing.APART;
    }

    /** Time until the edges come within reach of each other; 0 where they are. */
    public @Unit("y") double untilInReach() {
        return growth <= 0 ? Double.POSITIVE_INFINITY : Math.max(0, (gap - reach) / growth);
    }
}
