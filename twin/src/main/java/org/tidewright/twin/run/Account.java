package org.tidewright.twin.run;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collection;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.tidewright.seawater.unit.Unit;
import org.tidewright.twin.contract.Balance;
import org.tidewright.twin.contract.Body;
import org.tidewright.twin.contract.Stock;

/**
 * What every cause moved over an interval of a run: where a quantity came from and where it went. The sum over all causes
 * is the change of the state, to rounding, because each step is made of the same rates.
 */
public final class Account {
    private final Network network;
    private final List<String> causes;
    private final double[][] sums;
    private double from;
    private double to;

    /**
     * One line of an account.
     *
     * @param cause mechanism, routine or event
     * @param amount that it brought, negative for what it took, in the quantity's unit
     */
    public record Line(String cause, @Unit("*") double amount) {}

    /**
     * What one cause carried from one body to another.
     *
     * @param amount positive
     */
    public record Stream(
            String cause, Body from, Body to, @Unit("*") double amount) {}

    Account(Network network, List<String> causes) {
        this.network = network;
        this.causes = causes;
        sums = new double[causes.size()][network.size()];
    }

    void begin(double time) {
        from = time;
        to = time;
        for (double[] sum : sums) {
            Arrays.fill(sum, 0);
        }
    }

    void add(Tape tape, double weight) {
        tape.addTo(sums, weight);
    }

    void reach(double time) {
        to = time;
    }

    public @Unit("s") double from() {
        return from;
    }

    public @Unit("s") double to() {
        return to;
    }

    /** What changed a stock of some bodies taken together; what moved between them does not show. */
    public List<Line> of(Stock stock, Collection<Body> bodies) {
        return lines(place -> place.stock() == stock ? 1 : 0, bodies);
    }

    /** The same for a sum of stocks. */
    public List<Line> of(Balance balance, Collection<Body> bodies) {
        return lines(place -> balance.weight(place.stock()), bodies);
    }

    private record Place(Body body, Stock stock) {}

    @FunctionalInterface
    private interface Weight {
        double of(Place place);
    }

    private List<Line> lines(Weight weight, Collection<Body> bodies) {
        Map<String, Double> byName = new LinkedHashMap<>();
        for (int cause = 0; cause < sums.length; cause++) {
            double amount = 0;
            for (Body body : bodies) {
                for (Stock stock : body.held()) {
                    double counted = weight.of(new Place(body, stock));
                    amount += counted == 0 ? 0 : counted * sums[cause][body.at(stock)];
                }
            }
            if (amount != 0) {
                byName.merge(causes.get(cause), amount, Double::sum);
            }
        }
        return byName.entrySet().stream()
                .map(entry -> new Line(entry.getKey(), entry.getValue()))
                .sorted(Comparator.comparingDouble((Line line) -> -Math.abs(line.amount())))
                .toList();
    }

    /** Every cause's way between bodies: for a picture of flows. Where it takes from several, all give their share. */
    public List<Stream> streams(Balance balance) {
        List<Stream> streams = new ArrayList<>();
        double[] net = new double[network.bodies().size()];
        for (int cause = 0; cause < sums.length; cause++) {
            double received = 0;
            for (Body body : network.bodies()) {
                double amount = 0;
                for (Stock stock : body.held()) {
                    amount += balance.weight(stock) * sums[cause][body.at(stock)];
                }
                net[body.index()] = amount;
                received += Math.max(0, amount);
            }
            if (received > 0) {
                for (Body giver : network.bodies()) {
                    for (Body taker : network.bodies()) {
                        if (net[giver.index()] < 0 && net[taker.index()] > 0) {
                            double amount = -net[giver.index()] * net[taker.index()] / received;
                            streams.add(new Stream(causes.get(cause), giver, taker, amount));
                        }
                    }
                }
            }
        }
        return streams;
    }
}
