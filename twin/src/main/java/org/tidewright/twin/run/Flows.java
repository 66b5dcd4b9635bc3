package org.tidewright.twin.run;

import org.jspecify.annotations.Nullable;
import org.tidewright.twin.contract.Body;
import org.tidewright.twin.contract.Recipe;
import org.tidewright.twin.contract.Stock;
import org.tidewright.twin.contract.Transfers;

/** Turns transfers into slopes. Each writes two entries of opposite sign, so their sum stays zero; so do those of a recipe. */
final class Flows implements Transfers {
    /** Pure water near 25 °C, EOS-80; evaporation takes volume at this density. */
    private static final double FRESH_DENSITY = 997.05;

    private final double heatPerVolume;
    private final Moment now;
    private double[] slopes = {};
    private @Nullable Tape tape;

    Flows(Network network, Moment now) {
        this.heatPerVolume = network.density() * network.specificHeat();
        this.now = now;
    }

    Flows into(double[] newSlopes) {
        slopes = newSlopes;
        return this;
    }

    /** Notes every entry on a tape too, or on none. */
    void noteOn(@Nullable Tape newTape) {
        tape = newTape;
    }

    @Override
    public void water(Body from, Body to, double rate) {
        if (rate == 0) {
            return;
        }
        Body source = rate > 0 ? from : to;
        double volume = now.volume(source);
        double heat = rate * heatPerVolume * now.temperature(source);
        if (volume > 0) {
            double turnover = rate / volume;
            for (int i = 0; i < source.dissolvedCount(); i++) {
                Stock stock = source.dissolved(i);
                move(stock, from, to, turnover * now.stock(source, stock));
            }
        }
        move(Stock.HEAT, from, to, heat);
        move(Stock.WATER, from, to, rate);
    }

    @Override
    public void vapour(Body from, Body to, double rate, double latentHeat) {
        double volumeRate = rate / FRESH_DENSITY;
        // Per volume as everywhere in the network, so that losing water alone does not change a temperature.
        move(Stock.HEAT, from, to, rate * latentHeat + volumeRate * heatPerVolume * now.temperature(from));
        move(Stock.WATER, from, to, volumeRate);
    }

    @Override
    public void heat(Body from, Body to, double rate) {
        move(Stock.HEAT, from, to, rate);
    }

    @Override
    public void move(Stock stock, Body from, Body to, double rate) {
        write(from.at(stock), -rate);
        write(to.at(stock), rate);
    }

    @Override
    public void run(Recipe recipe, double rate) {
        for (int line = 0; line < recipe.size(); line++) {
            write(recipe.place(line), recipe.amount(line) * rate);
        }
    }

    private void write(int place, double rate) {
        slopes[place] += rate;
        if (tape != null) {
            tape.note(place, rate);
        }
    }
}
