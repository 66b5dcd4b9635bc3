package org.tidewright.twin.mechanism.nutrient;

import org.tidewright.twin.contract.Body;
import org.tidewright.twin.contract.Mechanism;
import org.tidewright.twin.contract.Parameter;
import org.tidewright.twin.contract.Stock;
import org.tidewright.twin.contract.Transfers;
import org.tidewright.twin.contract.View;

/** Suspended matter that comes to lie between the rocks, by first order. */
public record Settling(Body water, Body ground, Parameter rate) implements Mechanism {
    @Override
    public String name() {
        return "settling";
    }

    @Override
    public void act(View now, Transfers out) {
        double share = now.value(rate);
        out.move(Stock.ORGANIC_CARBON, water, ground, share * now.stock(water, Stock.ORGANIC_CARBON));
        out.move(Stock.ORGANIC_NITROGEN, water, ground, share * now.stock(water, Stock.ORGANIC_NITROGEN));
        out.move(Stock.ORGANIC_PHOSPHORUS, water, ground, share * now.stock(water, Stock.ORGANIC_PHOSPHORUS));
    }
}
