package org.tidewright.twin.mechanism.nutrient;

import org.tidewright.seawater.unit.Unit;
import org.tidewright.twin.contract.Body;
import org.tidewright.twin.contract.Mechanism;
import org.tidewright.twin.contract.Parameter;
import org.tidewright.twin.contract.Setting;
import org.tidewright.twin.contract.Stock;
import org.tidewright.twin.contract.Transfers;
import org.tidewright.twin.contract.View;
import org.tidewright.twin.mechanism.power.Supply;

/**
 * Foam that carries organic matter and a little water off. Two things stand in its way, one after the other: how much
 * water passes the column, and how fast matter turns into what foam can take; with plenty of flow the second alone counts,
 * which is the plateau that trials found.
 *
 * <pre>k = 1 / (V / (F e s) + 1 / k_most)</pre>
 *
 * @param strength setting: 1 for all it can, 0 for off
 * @param flow F of water through the column
 * @param skimmate water that leaves with the foam
 * @param singlePass e
 * @param skimmable s, share that foam can take
 * @param most specific rate with plenty of flow
 * @param systemVolume V
 */
public record Skimmer(
        String name,
        Body water,
        Body cup,
        Setting strength,
        @Unit("m^3/s") double flow,
        @Unit("m^3/s") double skimmate,
        Parameter singlePass,
        Parameter skimmable,
        Parameter most,
        @Unit("m^3") double systemVolume,
        Supply supply)
        implements Mechanism {
    @Override
    public void act(View now, Transfers out) {
        double speed = now.value(strength);
        if (speed <= 0 || !supply.isOn(now)) {
            return;
        }
        double byFlow = speed * flow * now.value(singlePass) * now.value(skimmable) / systemVolume;
        double byMatter = speed * now.value(most);
        double rate = byFlow * byMatter / (byFlow + byMatter) * systemVolume;
        out.water(water, cup, speed * skimmate);
        carryOff(Stock.ORGANIC_CARBON, rate, now, out);
        carryOff(Stock.ORGANIC_NITROGEN, rate, now, out);
        carryOff(Stock.ORGANIC_PHOSPHORUS, rate, now, out);
    }

    private void carryOff(Stock stock, double rate, View now, Transfers out) {
        out.move(stock, water, cup, rate * now.concentration(water, stock));
    }
}
