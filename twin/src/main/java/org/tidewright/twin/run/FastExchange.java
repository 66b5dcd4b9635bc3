package org.tidewright.twin.run;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;
import org.tidewright.twin.contract.Body;
import org.tidewright.twin.contract.Exchange;
import org.tidewright.twin.contract.Stock;
import org.tidewright.twin.contract.View;

/**
 * The circulation of a network as a linear operator on its stocks: what is dissolved moves with the turnover of each
 * body's water, heat with that of its heat capacity, and water itself only as far as a crest lets a surplus fall. The same
 * small matrix serves all dissolved stocks.
 */
final class FastExchange {
    private final Exchange[] exchanges;
    private final Body[] bodies;
    private final double heatPerVolume;
    private final int[][] dissolved;
    private final int[] heat;
    private final int[] water;
    private final int[] places;
    private final SmallMatrix ofDissolved;
    private final SmallMatrix ofHeat;
    private final SmallMatrix ofWater;
    private final int[] upper;
    private final int[] lower;

    FastExchange(Network network) {
        exchanges = network.mechanisms().stream()
                .filter(Exchange.class::isInstance)
                .map(Exchange.class::cast)
                .toArray(Exchange[]::new);
        List<Body> found = new ArrayList<>();
        for (Exchange exchange : exchanges) {
            for (Body body : List.of(exchange.upper(), exchange.lower())) {
                if (!found.contains(body)) {
                    found.add(body);
                }
            }
        }
        bodies = found.toArray(Body[]::new);
        upper = IntStream.range(0, exchanges.length)
                .map(i -> found.indexOf(exchanges[i].upper()))
                .toArray();
        lower = IntStream.range(0, exchanges.length)
                .map(i -> found.indexOf(exchanges[i].lower()))
                .toArray();
        heatPerVolume = network.density() * network.specificHeat();
        dissolved = network.layout().stocks().stream()
                .filter(Stock::isDissolved)
                .map(this::placesOf)
                .toArray(int[][]::new);
        heat = placesOf(Stock.HEAT);
        water = placesOf(Stock.WATER);
        places = found.stream()
                .flatMapToInt(body -> body.held().stream().mapToInt(body::at))
                .sorted()
                .toArray();
        ofDissolved = new SmallMatrix(bodies.length);
        ofHeat = new SmallMatrix(bodies.length);
        ofWater = new SmallMatrix(bodies.length);
    }

    boolean isEmpty() {
        return exchanges.length == 0;
    }

    /** The states it touches. */
    int[] places() {
        return places;
    }

    /** Takes turnovers as they are now. */
    void take(View now) {
        ofDissolved.clear();
        ofHeat.clear();
        ofWater.clear();
        for (int i = 0; i < exchanges.length; i++) {
            double flow = exchanges[i].flow(now);
            Body up = exchanges[i].upper();
            Body down = exchanges[i].lower();
            ofDissolved.carry(upper[i], lower[i], perVolume(flow, now.volume(up)));
            ofDissolved.carry(lower[i], upper[i], perVolume(flow, now.volume(down)));
            ofHeat.carry(upper[i], lower[i], perCapacity(flow, up, now));
            ofHeat.carry(lower[i], upper[i], perCapacity(flow, down, now));
            ofWater.carry(upper[i], lower[i], exchanges[i].relaxation(now));
        }
    }

    private static double perVolume(double flow, double volume) {
        return volume > 0 ? flow / volume : 0;
    }

    private double perCapacity(double flow, Body body, View now) {
        double capacity = heatPerVolume * Math.max(0, now.volume(body)) + body.solidHeatCapacity();
        return capacity > 0 ? flow * heatPerVolume / capacity : 0;
    }

    private int[] placesOf(Stock stock) {
        return Arrays.stream(bodies).mapToInt(body -> body.at(stock)).toArray();
    }

    /** Writes L y for the states it touches. */
    void apply(double[] state, double[] product) {
        for (int[] stock : dissolved) {
            ofDissolved.multiply(state, stock, product);
        }
        ofHeat.multiply(state, heat, product);
        ofWater.multiply(state, water, product);
    }

    /** Solves (I - shift L) x = right in place. */
    void solve(double shift, double[] right) {
        ofDissolved.shiftBy(shift);
        ofHeat.shiftBy(shift);
        ofWater.shiftBy(shift);
        for (int[] stock : dissolved) {
            ofDissolved.solve(right, stock);
        }
        ofHeat.solve(right, heat);
        ofWater.solve(right, water);
    }
}
