package org.tidewright.twin.mechanism.nutrient;

import org.tidewright.twin.contract.Body;
import org.tidewright.twin.contract.Mechanism;
import org.tidewright.twin.contract.Parameter;
import org.tidewright.twin.contract.Setting;
import org.tidewright.twin.contract.Stock;
import org.tidewright.twin.contract.Transfers;
import org.tidewright.twin.contract.View;
import org.tidewright.twin.law.nutrient.ActivatedCarbon;

/**
 * Activated carbon that takes up part of the organic matter in the water until it is full; nitrogen and phosphorus come
 * along as they are in that matter, and as they are on the carbon when it gives back.
 *
 * @param medium holds what was taken up
 * @param mass setting: of the carbon, kg
 * @param flow setting: of water through it, m³/s
 * @param capacity organic carbon per mass of it when full
 */
public record CarbonMedium(
        String name, Body water, Body medium, Setting mass, Setting flow, Parameter singlePass, Parameter capacity)
        implements Mechanism {
    @Override
    public void act(View now, Transfers out) {
        double most = now.value(mass) * now.value(capacity);
        double through = now.value(flow);
        if (most <= 0 || through <= 0) {
            return;
        }
        double filling = Math.max(0, Math.min(1, now.stock(medium, Stock.ORGANIC_CARBON) / most));
        double adsorbable = ActivatedCarbon.ADSORBABLE.usual() * now.concentration(water, Stock.ORGANIC_CARBON);
        double carbon = ActivatedCarbon.uptake(
                through, now.value(singlePass), adsorbable, filling, ActivatedCarbon.HALF_FILLING.usual());
        Body giver = carbon > 0 ? water : medium;
        double held = now.stock(giver, Stock.ORGANIC_CARBON);
        if (held > 0) {
            double share = carbon / held;
            out.move(Stock.ORGANIC_CARBON, water, medium, carbon);
            out.move(Stock.ORGANIC_NITROGEN, water, medium, share * now.stock(giver, Stock.ORGANIC_NITROGEN));
            out.move(Stock.ORGANIC_PHOSPHORUS, water, medium, share * now.stock(giver, Stock.ORGANIC_PHOSPHORUS));
        }
    }
}
