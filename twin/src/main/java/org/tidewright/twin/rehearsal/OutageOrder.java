package org.tidewright.twin.rehearsal;

import org.tidewright.seawater.unit.Unit;

/**
 * A power cut to be rehearsed.
 *
 * @param hours it lasts
 * @param outdoors the weather meanwhile; the room's own heating and cooling are off
 * @param airHolesClear whether siphon-break holes let air in
 * @param backupUsed whether the plan's battery and generator serve
 */
public record OutageOrder(@Unit("h") double hours, Outdoors outdoors, boolean airHolesClear, boolean backupUsed) {
    /** Three weeks: longer than any store of the plan lasts. */
    private static final double LONGEST = 504;

    public OutageOrder {
        if (!(hours > 0 && hours <= LONGEST)) {
            throw new IllegalArgumentException("an outage of " + hours
                    + " h cannot be rehearsed; it must last more than 0 and at most " + LONGEST + " h");
        }
    }

    /** The same with the air holes clear or blocked. */
    public OutageOrder withAirHolesClear(boolean clear) {
        return new OutageOrder(hours, outdoors, clear, backupUsed);
    }
}
