package org.tidewright.twin.run;

import java.util.List;
import org.tidewright.seawater.unit.Unit;
import org.tidewright.twin.contract.Balance;
import org.tidewright.twin.contract.Body;
import org.tidewright.twin.contract.Stock;

/** The stocks of every body of a network. */
public final class State {
    private final Network network;
    private final double[] stocks;

    /** All bodies empty. */
    public State(Network network) {
        this.network = network;
        stocks = new double[network.size()];
    }

    private State(Network network, double[] stocks) {
        this.network = network;
        this.stocks = stocks;
    }

    /**
     * Fills a body.
     *
     * @param salinity practical salinity
     */
    public State fill(
            Body body,
            @Unit("m^3") double volume,
            @Unit("degC") double temperature,
            @Unit("1") double salinity,
            @Unit("mol/m^3") double oxygen) {
        double heatCapacity = network.density() * network.specificHeat() * volume + body.solidHeatCapacity();
        stocks[body.at(Stock.WATER)] = volume;
        stocks[body.at(Stock.HEAT)] = heatCapacity * temperature;
        stocks[body.at(Stock.SALT)] = volume * Salt.perVolume(salinity, network.density());
        stocks[body.at(Stock.OXYGEN)] = volume * oxygen;
        return this;
    }

    /** Dissolves something in a body's water, in the stock's unit per volume. */
    public State dissolve(Body body, Stock stock, @Unit("mol/m^3") double concentration) {
        return set(body, stock, concentration * get(body, Stock.WATER));
    }

    /** Sets one stock, in its unit. */
    public State set(Body body, Stock stock, @Unit("*") double amount) {
        stocks[body.at(stock)] = amount;
        return this;
    }

    /** Pours water with all that is in it from one body into another. */
    public State pour(Body from, Body to, @Unit("m^3") double volume) {
        Moment now = new Moment(network, new double[0], new double[0]).at(0, stocks.clone());
        new Flows(network, now).into(stocks).water(from, to, volume);
        return this;
    }

    /** One stock; none where the body does not hold it. */
    public @Unit("*") double get(Body body, Stock stock) {
        return body.holds(stock) ? stocks[body.at(stock)] : 0;
    }

    /** A stock over all bodies. */
    public @Unit("*") double total(Stock stock) {
        double sum = 0;
        for (Body body : network.bodies()) {
            sum += body.holds(stock) ? stocks[body.at(stock)] : 0;
        }
        return sum;
    }

    /** What is neither made nor lost, over all bodies. */
    public @Unit("*") double total(Balance balance) {
        double sum = 0;
        for (Stock stock : network.layout().stocks()) {
            double weight = balance.weight(stock);
            sum += weight == 0 ? 0 : weight * total(stock);
        }
        return sum;
    }

    public State copy() {
        return new State(network, stocks.clone());
    }

    /**
     * The same stocks in another network of the same bodies: the system goes on by another regime or with other animals.
     *
     * @throws IllegalArgumentException where the other has other bodies
     */
    public State in(Network other) {
        if (!named(network).equals(named(other))) {
            throw new IllegalArgumentException("what is in " + named(network) + " cannot be in " + named(other)
                    + "; it needs a network of the same bodies, in the same order, which hold the same");
        }
        return new State(other, stocks.clone());
    }

    private static List<String> named(Network network) {
        return network.bodies().stream()
                .map(body -> body.name() + " " + body.held())
                .toList();
    }

    double[] stocks() {
        return stocks;
    }
}
