package org.tidewright.twin.mechanism.biota;

import org.tidewright.twin.contract.Body;
import org.tidewright.twin.contract.Mechanism;
import org.tidewright.twin.contract.Parameter;
import org.tidewright.twin.contract.Stock;
import org.tidewright.twin.contract.Transfers;
import org.tidewright.twin.contract.View;
import org.tidewright.twin.law.biota.Carrion;

/**
 * A dead animal that falls apart in the water; what it was made of is then suspended matter, which rots.
 *
 * @param halfTime of falling apart at 25 °C, s
 */
public record CarrionDecay(Body carrion, Body water, Parameter halfTime) implements Mechanism {
    @Override
    public String name() {
        return "dead animals";
    }

    @Override
    public void act(View now, Transfers out) {
        release(Stock.ORGANIC_CARBON, now, out);
        release(Stock.ORGANIC_NITROGEN, now, out);
        release(Stock.ORGANIC_PHOSPHORUS, now, out);
    }

    private void release(Stock stock, View now, Transfers out) {
        double left = now.stock(carrion, stock);
        if (left > 0) {
            out.move(
                    stock,
                    carrion,
                    water,
                    Carrion.released(left, now.value(halfTime), Carrion.WARMTH.usual(), now.temperature(water)));
        }
    }
}
