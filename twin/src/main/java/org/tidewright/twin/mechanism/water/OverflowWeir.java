package org.tidewright.twin.mechanism.water;

import org.tidewright.seawater.unit.Unit;
import org.tidewright.twin.contract.Body;
import org.tidewright.twin.contract.Parameter;
import org.tidewright.twin.contract.View;
import org.tidewright.twin.law.hydraulic.Weir;

/**
 * Water over the crest of an overflow.
 *
 * @param crestHeight above the finished floor
 * @param law free flow by head
 * @param coefficientFactor by which the law's coefficient is off: heads of 5–20 mm lie below what weirs are calibrated for
 */
public record OverflowWeir(Body from, Body to, @Unit("m") double crestHeight, Weir law, Parameter coefficientFactor)
        implements WaterWay {
    @Override
    public Kind kind() {
        return Kind.WEIR;
    }

    @Override
    public double flow(View now) {
        return now.value(coefficientFactor) * Levelling.over(crestHeight, law, from, to, now);
    }
}
