package org.tidewright.twin.mechanism.biota;

import java.util.List;
import org.tidewright.twin.contract.Body;
import org.tidewright.twin.contract.Mechanism;
import org.tidewright.twin.contract.Parameter;
import org.tidewright.twin.contract.Stock;
import org.tidewright.twin.contract.Transfers;
import org.tidewright.twin.contract.View;
import org.tidewright.twin.law.biota.Hunger;

/**
 * Fish that have grown too thin and die: a share of their flesh, and with it of all they carry, becomes carrion.
 *
 * @param flesh of the fish
 * @param carried what else they hold: stomach, gut and reserve
 * @param lethal condition at which a tenth a day dies
 */
public record Starvation(Body water, Body flesh, List<Body> carried, Body carrion, Parameter lethal)
        implements Mechanism {
    private static final List<Stock> ELEMENTS =
            List.of(Stock.ORGANIC_CARBON, Stock.ORGANIC_NITROGEN, Stock.ORGANIC_PHOSPHORUS);

    @Override
    public String name() {
        return "fish that starve";
    }

    @Override
    public void act(View now, Transfers out) {
        double condition =
                Hunger.condition(now.stock(flesh, Stock.ORGANIC_NITROGEN), now.stock(flesh, Stock.ORGANIC_PHOSPHORUS));
        if (condition >= 1) {
            return;
        }
        double rate = Hunger.deathRate(condition, now.value(lethal), now.temperature(water));
        die(flesh, rate, now, out);
        for (Body body : carried) {
            die(body, rate, now, out);
        }
    }

    private void die(Body body, double rate, View now, Transfers out) {
        for (Stock stock : ELEMENTS) {
            if (body.holds(stock)) {
                out.move(stock, body, carrion, rate * now.stock(body, stock));
            }
        }
    }
}
