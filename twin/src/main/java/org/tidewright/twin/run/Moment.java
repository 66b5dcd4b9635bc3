package org.tidewright.twin.run;

import java.util.Arrays;
import org.jspecify.annotations.Nullable;
import org.tidewright.twin.contract.Body;
import org.tidewright.twin.contract.Derived;
import org.tidewright.twin.contract.Parameter;
import org.tidewright.twin.contract.Setting;
import org.tidewright.twin.contract.Solution;
import org.tidewright.twin.contract.Stock;
import org.tidewright.twin.contract.View;

/** A state at a time, as mechanisms see it. Reused from step to step: it must not be kept. */
final class Moment implements View {
    private final Network network;
    private final double heatPerVolume;
    private final double[] parameters;
    private final double[] settings;
    private final double[] derived;
    private double time;
    private final @Nullable SolvedBody[] solved;
    private double[] stocks = {};
    private long number;

    Moment(Network network, double[] parameters, double[] settings) {
        this.network = network;
        this.heatPerVolume = network.density() * network.specificHeat();
        this.parameters = parameters;
        this.settings = settings;
        derived = new double[network.derived()];
        Arrays.fill(derived, Double.NaN);
        solved = new SolvedBody[network.bodies().size()];
    }

    double[] parameters() {
        return parameters;
    }

    Moment at(double newTime, double[] newStocks) {
        time = newTime;
        stocks = newStocks;
        number++;
        return this;
    }

    /** Counts the moments, so that what was found for one is not taken for another. */
    long number() {
        return number;
    }

    /** After the state was changed at once: what was found before no longer holds. */
    void refresh() {
        number++;
    }

    @Override
    public double time() {
        return time;
    }

    @Override
    public double volume(Body body) {
        return stocks[body.at(Stock.WATER)];
    }

    @Override
    public double level(Body body) {
        return body.shape().level(volume(body));
    }

    @Override
    public double height(Body body) {
        return body.bottomHeight() + level(body);
    }

    @Override
    public double temperature(Body body) {
        double capacity = heatPerVolume * volume(body) + body.solidHeatCapacity();
        return capacity > 0 ? stocks[body.at(Stock.HEAT)] / capacity : 0;
    }

    @Override
    public double salinity(Body body) {
        double volume = volume(body);
        return volume > 0 ? Salt.practicalSalinity(stocks[body.at(Stock.SALT)] / volume, network.density()) : 0;
    }

    @Override
    public double oxygen(Body body) {
        return concentration(body, Stock.OXYGEN);
    }

    @Override
    public double concentration(Body body, Stock stock) {
        double volume = volume(body);
        return volume > 0 ? Math.max(0, stocks[body.at(stock)] / volume) : 0;
    }

    @Override
    public Solution solution(Body body) {
        SolvedBody solution = solved[body.index()];
        if (solution == null) {
            solution = new SolvedBody(this, body, network.density());
            solved[body.index()] = solution;
        }
        return solution;
    }

    @Override
    public double stock(Body body, Stock stock) {
        return stocks[body.at(stock)];
    }

    @Override
    public double value(Parameter parameter) {
        return parameters[parameter.index()];
    }

    @Override
    public double derived(Derived number) {
        double known = derived[number.index()];
        if (Double.isNaN(known)) {
            known = number.of().in(this);
            derived[number.index()] = known;
        }
        return known;
    }

    @Override
    public double value(Setting setting) {
        return settings[setting.index()];
    }
}
