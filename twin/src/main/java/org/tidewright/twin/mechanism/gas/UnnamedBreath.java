package org.tidewright.twin.mechanism.gas;

import org.tidewright.seawater.unit.Unit;
import org.tidewright.twin.contract.Body;
import org.tidewright.twin.contract.Mechanism;
import org.tidewright.twin.contract.Parameter;
import org.tidewright.twin.contract.Recipe;
import org.tidewright.twin.contract.Setting;
import org.tidewright.twin.contract.Stock;
import org.tidewright.twin.contract.Transfers;
import org.tidewright.twin.contract.View;
import org.tidewright.twin.law.gas.OxygenLimitation;
import org.tidewright.twin.law.gas.Q10;

/**
 * The breath of animals a plan does not name: a rate known at one temperature in well aired water, that rises with warmth
 * and fails as oxygen runs out.
 */
public final class UnnamedBreath implements Mechanism {
    private final Body water;
    private final double rate;
    private final Parameter factor;
    private final double usualTemperature;
    private final double usualShare;
    private final Setting counted;
    private final Recipe breathing;

    /**
     * Somebody who breathes.
     *
     * @param life where the oxygen goes and the carbon comes from
     * @param rate at {@code usualTemperature} and {@code usualOxygen}
     * @param factor by which the rate is off
     * @param counted setting: 1 while it counts
     */
    public UnnamedBreath(
            Body water,
            Body life,
            @Unit("mol/s") double rate,
            Parameter factor,
            @Unit("degC") double usualTemperature,
            @Unit("mol/m^3") double usualOxygen,
            Setting counted) {
        this.water = water;
        this.rate = rate;
        this.factor = factor;
        this.usualTemperature = usualTemperature;
        usualShare = OxygenLimitation.share(usualOxygen, OxygenLimitation.HALF_SATURATION);
        this.counted = counted;
        breathing = Recipe.named("breathing of unnamed animals")
                .takes(life, Stock.ORGANIC_CARBON, 1)
                .gives(water, Stock.INORGANIC_CARBON, 1)
                .moves(Stock.OXYGEN, water, life, 1)
                .build();
    }

    @Override
    public String name() {
        return "unnamed animals";
    }

    @Override
    public void act(View now, Transfers out) {
        double counts = now.value(counted);
        if (counts > 0) {
            double warmth = Q10.factor(Q10.COMMUNITY, now.temperature(water), usualTemperature);
            double air = OxygenLimitation.share(now.oxygen(water), OxygenLimitation.HALF_SATURATION) / usualShare;
            out.run(breathing, counts * rate * now.value(factor) * warmth * air);
        }
    }
}
