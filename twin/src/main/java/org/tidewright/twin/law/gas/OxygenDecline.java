package org.tidewright.twin.law.gas;

import java.util.OptionalDouble;
import org.tidewright.seawater.range.Bounds;
import org.tidewright.seawater.unit.Unit;

/**
 * Oxygen in one mixed body of water whose animals take up a constant rate while the surface gives some back: the outage
 * that has a closed form.
 *
 * <pre>
 * dC/dt = (k/h) (C* - C) - R
 * C(t) = C_eq + (C0 - C_eq) exp(-k t / h),  C_eq = C* - R h / k
 * </pre>
 *
 * @param saturation C*
 * @param respiration R, uptake per volume of water
 * @param velocity k, transfer velocity of oxygen; above zero
 * @param depth h, volume of the water over its surface
 */
public record OxygenDecline(
        @Unit("mol/m^3") double saturation,
        @Unit("mol/(m^3*s)") double respiration,
        @Unit("m/s") double velocity,
        @Unit("m") double depth) {

    public OxygenDecline {
        Bounds.within(saturation, "mol/m^3", 0, 100, "saturation");
        Bounds.within(respiration, "mol/(m^3*s)", 0, 1, "respiration");
        Bounds.within(velocity, "m/s", Double.MIN_NORMAL, 0.1, "transfer velocity");
        Bounds.within(depth, "m", 1e-3, 1000, "volume over surface");
    }

    /**
     * Where the oxygen would settle; negative when the animals need more than any surface film can bring, that is, when
     * the water runs out.
     *
     * <pre>C_eq = C* - R h / k</pre>
     *
     * @return concentration
     * @source mass balance
     * @validity respiration that does not fall with oxygen
     */
    @Unit("mol/m^3")
    public double equilibrium() {
        return saturation - respiration * depth / velocity;
    }

    /**
     * Concentration after a time.
     *
     * @param initial C0
     * @param time since then
     * @return concentration, not below zero
     * @source mass balance, closed form
     * @validity respiration that does not fall with oxygen: too low near zero
     */
    @Unit("mol/m^3")
    public double after(@Unit("mol/m^3") double initial, @Unit("s") double time) {
        Bounds.within(initial, "mol/m^3", 0, 100, "initial concentration");
        Bounds.within(time, "s", 0, 1e12, "time");
        double settled = equilibrium();
        return Math.max(0, settled + (initial - settled) * Math.exp(-velocity * time / depth));
    }

    /**
     * Time until a mark is reached.
     *
     * <pre>t = (h / k) ln[(C0 - C_eq) / (C1 - C_eq)]</pre>
     *
     * @param initial C0
     * @param mark C1
     * @return time, or nothing when the oxygen settles before it gets there
     * @source mass balance, closed form
     * @validity respiration that does not fall with oxygen
     */
    public @Unit("s") OptionalDouble timeTo(@Unit("mol/m^3") double initial, @Unit("mol/m^3") double mark) {
        Bounds.within(initial, "mol/m^3", 0, 100, "initial concentration");
        Bounds.within(mark, "mol/m^3", 0, 100, "mark");
        double settled = equilibrium();
        double ratio = (initial - settled) / (mark - settled);
        // above 1 the mark lies between start and end; below, behind the start or beyond the end
        return ratio >= 1 && ratio < Double.POSITIVE_INFINITY
                ? OptionalDouble.of(depth / velocity * Math.log(ratio))
                : OptionalDouble.empty();
    }

    /**
     * Transfer velocity that would hold the oxygen at a mark.
     *
     * <pre>k = R h / (C* - C1)</pre>
     *
     * @param mark C1, below saturation
     * @return transfer velocity
     * @source mass balance
     * @validity steady state
     */
    @Unit("m/s")
    public double velocityToHold(@Unit("mol/m^3") double mark) {
        Bounds.within(mark, "mol/m^3", 0, Math.nextDown(saturation), "mark below saturation");
        return respiration * depth / (saturation - mark);
    }
}
