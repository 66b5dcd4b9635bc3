package org.tidewright.twin.mechanism.gas;

import org.tidewright.seawater.unit.Unit;
import org.tidewright.twin.contract.Body;
import org.tidewright.twin.contract.Mechanism;
import org.tidewright.twin.contract.Parameter;
import org.tidewright.twin.contract.Stock;
import org.tidewright.twin.contract.Transfers;
import org.tidewright.twin.contract.View;
import org.tidewright.twin.law.gas.OxygenLimitation;
import org.tidewright.twin.law.gas.Q10;

/**
 * What breathes in a body: a rate known at one temperature and in well aired water, that rises with warmth and fails as
 * oxygen runs out.
 *
 * @param life where the oxygen goes
 * @param rate at {@code usualTemperature} and {@code usualOxygen}
 * @param factor by which the rate is off
 * @param q10 factor for ten kelvin
 */
public record Respiration(
        Body water,
        Body life,
        @Unit("mol/s") double rate,
        Parameter factor,
        @Unit("1") double q10,
        @Unit("degC") double usualTemperature,
        @Unit("mol/m^3") double usualOxygen)
        implements Mechanism {
    @Override
    public void act(View now, Transfers out) {
        double warmth = Q10.factor(q10, now.temperature(water), usualTemperature);
        double air = OxygenLimitation.share(now.oxygen(water), OxygenLimitation.HALF_SATURATION)
                / OxygenLimitation.share(usualOxygen, OxygenLimitation.HALF_SATURATION);
        out.move(Stock.OXYGEN, water, life, rate * now.value(factor) * warmth * air);
    }
}
