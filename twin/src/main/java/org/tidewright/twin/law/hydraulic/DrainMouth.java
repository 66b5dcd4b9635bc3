package org.tidewright.twin.law.hydraulic;

import org.tidewright.seawater.range.Bounds;
import org.tidewright.seawater.unit.Gravity;
import org.tidewright.seawater.unit.Unit;

/**
 * Entry of a vertical pipe that is open at its top: its rim is a round weir while the water is thin, its bore an
 * orifice when it is deep. The smaller of the two rules.
 *
 * <pre>
 * rim:      Q = 1.84 pi d h^1.5
 * orifice:  Q = 0.6 (pi/4) d^2 sqrt(2 g h)
 * </pre>
 *
 * <p>They cross at h = 0.36 d.
 *
 * @param bore d, inner diameter of the mouth
 * @source rim as Francis' weir 1883 along the circumference, orifice as {@link Orifice} (both from memory)
 * @validity order 15 %; vortices and a wide lip change it
 * @checkvalue d = 40 mm, 2500 L/h: h = 43.25 mm
 */
public record DrainMouth(@Unit("m") double bore) {
    private static final double RIM_COEFFICIENT = 1.84;

    public DrainMouth {
        Bounds.positive(bore, "m", "bore of the mouth");
    }

    /** Flow into the mouth with the water standing a head over its lip; none at or below the lip. */
    @Unit("m^3/s")
    public double flow(@Unit("m") double head) {
        if (!(head > 0)) {
            return Dry.noFlow(head);
        }
        double root = Math.sqrt(head);
        return Math.min(rimFactor() * head * root, orificeFactor() * root);
    }

    /** Head over the lip at which the mouth takes a flow. */
    @Unit("m")
    public double head(@Unit("m^3/s") double flow) {
        Bounds.notNegative(flow, "m^3/s", "flow into the mouth");
        double perRim = flow / rimFactor();
        double perOrifice = flow / orificeFactor();
        return Math.max(Math.cbrt(perRim * perRim), perOrifice * perOrifice);
    }

    private double rimFactor() {
        return RIM_COEFFICIENT * Math.PI * bore;
    }

    private double orificeFactor() {
        return Orifice.SHARP_EDGED * Math.PI / 4 * bore * bore * Math.sqrt(2 * Gravity.STANDARD);
    }
}
