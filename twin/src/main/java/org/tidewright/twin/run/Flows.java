package org.tidewright.twin.run;

import org.tidewright.twin.contract.Body;
import org.tidewright.twin.contract.Stock;
import org.tidewright.twin.contract.Transfers;

/** Turns transfers into slopes. Each writes two entries of opposite sign, so their sum stays zero. */
final class Flows implements Transfers {
    /** Pure water near 25 °C, EOS-80; evaporation takes volume at this density. */
    private static final double FRESH_DENSITY = 997.05;

    private final double heatPerVolume;
    private final Moment now;
    private double[] slopes = {};

    Flows(Network network, Moment now) {
        this.heatPerVolume = network.density() * network.specificHeat();
        this.now = now;
    }

    Flows into(double[] newSlopes) {
        slopes = newSlopes;
        return this;
    }

    @Override
    public void water(Body from, Body to, double rate) {
        if (rate == 0) {
            return;
        }
        Body source = rate > 0 ? from : to;
        double volume = now.volume(source);
        move(from, to, Stock.WATER, rate);
        move(from, to, Stock.HEAT, rate * heatPerVolume * now.temperature(source));
        if (volume > 0) {
            double turnover = rate / volume;
            move(from, to, Stock.SALT, turnover * now.stock(source, Stock.SALT));
            move(from, to, Stock.OXYGEN, turnover * now.stock(source, Stock.OXYGEN));
        }
    }

    @Override
    public void vapour(Body from, Body to, double rate, double latentHeat) {
        double volumeRate = rate / FRESH_DENSITY;
        move(from, to, Stock.WATER, volumeRate);
        // Per volume as everywhere in the network, so that losing water alone does not change a temperature.
        move(from, to, Stock.HEAT, rate * latentHeat + volumeRate * heatPerVolume * now.temperature(from));
    }

    @Override
    public void heat(Body from, Body to, double rate) {
        move(from, to, Stock.HEAT, rate);
    }

    @Override
    public void oxygen(Body from, Body to, double rate) {
        move(from, to, Stock.OXYGEN, rate);
    }

    private void move(Body from, Body to, Stock stock, double rate) {
        slopes[from.at(stock)] -= rate;
        slopes[to.at(stock)] += rate;
    }
}
