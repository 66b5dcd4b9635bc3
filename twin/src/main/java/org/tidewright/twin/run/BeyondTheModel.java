package org.tidewright.twin.run;

import org.tidewright.seawater.unit.Unit;

/** A run has come where the laws of the twin no longer hold: water that dries up, freezes or turns to caustic. */
public final class BeyondTheModel extends IllegalStateException {
    private static final long serialVersionUID = 1L;

    private final double time;

    BeyondTheModel(@Unit("s") double time, String why, Throwable cause) {
        super("the run cannot go on from " + time + " s: " + why, cause);
        this.time = time;
    }

    /** How far the run came. */
    public @Unit("s") double time() {
        return time;
    }
}
