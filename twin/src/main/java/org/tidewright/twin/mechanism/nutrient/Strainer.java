package org.tidewright.twin.mechanism.nutrient;

import org.tidewright.seawater.unit.Unit;
import org.tidewright.twin.contract.Body;
import org.tidewright.twin.contract.Drawn;
import org.tidewright.twin.contract.Mechanism;
import org.tidewright.twin.contract.Parameter;
import org.tidewright.twin.contract.Setting;
import org.tidewright.twin.contract.Stock;
import org.tidewright.twin.contract.Transfers;
import org.tidewright.twin.contract.View;
import org.tidewright.twin.law.nutrient.Remineralisation;
import org.tidewright.twin.law.nutrient.Straining;
import org.tidewright.twin.mechanism.power.Supply;

/**
 * A fine filter that holds particles of waste back. Water goes on passing what it holds, so that this rots there as it
 * would afloat, until the filter is changed.
 *
 * <pre>k = 1 / (V/(F e p) + 1/k_most), k_most = 0.2/d w/(1 - w)</pre>
 *
 * @param caught what it holds
 * @param strength setting: 1 for all it can, 0 for none
 * @param flow F of water through it
 * @param heldBack e, share of the particles that one pass leaves behind
 * @param wasteCaught w, share of the waste caught with plenty of flow, and as a share p of particles in it
 * @param systemVolume V
 * @param supply of the pump that sends water through it
 */
public record Strainer(
        String name,
        Body water,
        Body caught,
        Setting strength,
        @Unit("m^3/s") double flow,
        Drawn heldBack,
        Parameter wasteCaught,
        @Unit("m^3") double systemVolume,
        Supply supply)
        implements Mechanism {
    @Override
    public void act(View now, Transfers out) {
        double speed = now.value(strength);
        if (speed <= 0 || !supply.isOn(now)) {
            return;
        }
        double rate = speed
                * systemVolume
                * Straining.rate(
                        flow,
                        Math.min(1, heldBack.in(now)),
                        now.value(wasteCaught),
                        Remineralisation.LABILE.usual(),
                        systemVolume);
        hold(Stock.ORGANIC_CARBON, rate, now, out);
        hold(Stock.ORGANIC_NITROGEN, rate, now, out);
        hold(Stock.ORGANIC_PHOSPHORUS, rate, now, out);
    }

    private void hold(Stock stock, double rate, View now, Transfers out) {
        out.move(stock, water, caught, rate * now.concentration(water, stock));
    }
}
