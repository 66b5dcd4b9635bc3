package org.tidewright.twin.law.hydraulic;

import org.tidewright.seawater.range.Bounds;
import org.tidewright.seawater.unit.Unit;

/** What passes where no water stands above the crest or the mouth. */
final class Dry {
    private Dry() {}

    /**
     * The flow of a head that is not above 0: none; but a head that is not a number must not pass as a dry one.
     *
     * @param head over the crest or the mouth
     */
    @Unit("m^3/s")
    static double noFlow(@Unit("m") double head) {
        Bounds.number(head, "m", "head");
        return 0;
    }
}
