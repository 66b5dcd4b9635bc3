package org.tidewright.twin.law.gas;

import org.tidewright.seawater.range.Bounds;
import org.tidewright.seawater.unit.Unit;

/** How fast gases pass a stirred surface, by the power that pumps spend in the water below it. */
public final class SmallEddies {
    private SmallEddies() {}

    /**
     * Transfer velocity over that at full power. The smallest eddies renew the film at the surface; their size and speed
     * follow from the power dissipated in a volume and from viscosity alone.
     *
     * <pre>k = 0.4 Sc^(-1/2) (eps nu)^(1/4);  k/k_full = (P/P_full)^(1/4)</pre>
     *
     * @param power P/P_full, what is spent now over what all pumps spend at full speed
     * @return k/k_full
     * @source Lamont and Scott 1970, AIChE J. 16, 513-519
     * @validity a surface kept in motion from below; it does not know the slow exchange of still water
     */
    @Unit("1")
    public static double share(@Unit("1") double power) {
        return Math.sqrt(Math.sqrt(Bounds.within(power, "1", 0, 1e3, "share of the power")));
    }
}
