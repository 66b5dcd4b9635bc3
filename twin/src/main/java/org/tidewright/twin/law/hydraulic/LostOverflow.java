package org.tidewright.twin.law.hydraulic;

import org.tidewright.seawater.range.Bounds;
import org.tidewright.seawater.unit.Unit;

/**
 * The display's way down is shut (a hang-on overflow box lost its siphon, a drain is blocked and has no spare) and the
 * return pump goes on until its section is dry.
 *
 * <pre>spilled = moved + reservoir - room, if positive</pre>
 *
 * <p>The top-off sees a low level and adds its reservoir to it all.
 *
 * @param moved water the pump can still move, see {@link SumpCascade#movable}
 * @param room of the display from its running level to its rim, A_d (H - level)
 * @param reservoir water the top-off can add
 * @source conservation of volume
 */
public record LostOverflow(
        @Unit("m^3") double moved,
        @Unit("m^3") double room,
        @Unit("m^3") double reservoir) {
    public LostOverflow {
        Bounds.notNegative(moved, "m^3", "water the pump can move");
        Bounds.notNegative(room, "m^3", "room of the display");
        Bounds.notNegative(reservoir, "m^3", "water of the top-off");
    }

    /** Water left over when the display is full; negative is room left. */
    @Unit("m^3")
    public double excess() {
        return moved + reservoir - room;
    }

    /** Water on the floor. */
    @Unit("m^3")
    public double spilled() {
        return Math.max(0, excess());
    }

    /** Time until the pump runs dry at a flow. */
    @Unit("s")
    public double timeToDry(@Unit("m^3/s") double flow) {
        return moved / Bounds.positive(flow, "m^3/s", "flow of the pump");
    }
}
