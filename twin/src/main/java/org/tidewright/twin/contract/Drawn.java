package org.tidewright.twin.contract;

import org.tidewright.seawater.unit.Unit;

/** A number that stands still during a run: one that is known, a parameter, or what follows from several of them. */
@FunctionalInterface
public interface Drawn {
    /** Its value in a draw. */
    @Unit("*")
    double in(Draw draw);

    /** Its value with every parameter in the middle of its distribution. */
    default @Unit("*") double usual() {
        return in(Draw.USUAL);
    }

    /** A number known exactly. */
    static Drawn exactly(@Unit("*") double value) {
        return draw -> value;
    }
}
