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
 * The circulation of a network as an operator on its stocks: what is dissolved moves with the turnover of each
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
    private final SmallMatrix frozenDissolved;
    private final SmallMatrix frozenHeat;
    private final double[] flows;
    private final double[] relaxations;
    private final double[] volumes;
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
        frozenDissolved = new SmallMatrix(bodies.length);
        frozenHeat = new SmallMatrix(bodies.length);
        flows = new double[exchanges.length];
        relaxations = new double[exchanges.length];
        volumes = new double[bodies.length];
    }

    boolean isEmpty() {
        return exchanges.length == 0;
    }

    /** The states it touches. */
    int[] places() {
        return places;
    }

    /** Takes flows, and the turnovers they make, as they are now. */
    void take(View now) {
        for (int i = 0; i < exchanges.length; i++) {
            flows[i] = exchanges[i].flow(now);
            relaxations[i] = exchanges[i].relaxation(now);
        }
        ofWater.clear();
        for (int i = 0; i < exchanges.length; i++) {
            ofWater.carry(upper[i], lower[i], relaxations[i]);
        }
        for (int i = 0; i < bodies.length; i++) {
            volumes[i] = now.volume(bodies[i]);
        }
        turnOver(frozenDissolved, frozenHeat);
    }

    /** Turnovers of the flows taken in the volumes at hand. */
    private void turnOver(SmallMatrix dissolvedMatrix, SmallMatrix heatMatrix) {
        dissolvedMatrix.clear();
        heatMatrix.clear();
        for (int i = 0; i < exchanges.length; i++) {
            carry(dissolvedMatrix, heatMatrix, upper[i], lower[i], flows[i]);
            carry(dissolvedMatrix, heatMatrix, lower[i], upper[i], flows[i]);
        }
    }

    private void carry(SmallMatrix dissolvedMatrix, SmallMatrix heatMatrix, int from, int to, double flow) {
        double volume = Math.max(0, volumes[from]);
        double capacity = heatPerVolume * volume + bodies[from].solidHeatCapacity();
        dissolvedMatrix.carry(from, to, volume > 0 ? flow / volume : 0);
        heatMatrix.carry(from, to, capacity > 0 ? flow * heatPerVolume / capacity : 0);
    }

    private int[] placesOf(Stock stock) {
        return Arrays.stream(bodies).mapToInt(body -> body.at(stock)).toArray();
    }

    private void readVolumes(double[] state) {
        for (int i = 0; i < bodies.length; i++) {
            volumes[i] = state[water[i]];
        }
    }

    /** Writes what the exchange carries in a state, by the state's own volumes. */
    void apply(double[] state, double[] product) {
        readVolumes(state);
        turnOver(ofDissolved, ofHeat);
        ofWater.multiply(state, water, product);
        for (int[] stock : dissolved) {
            ofDissolved.multiply(state, stock, product);
        }
        ofHeat.multiply(state, heat, product);
    }

    /**
     * Solves y - shift X(y) = right in place: first for the water, which follows by itself, and then, its volumes known, for
     * what is in it. Volumes of the start would leave the waters apart by as much as a volume changes in a step.
     */
    void solve(double shift, double[] right) {
        ofWater.shiftBy(shift);
        ofWater.solve(right, water);
        readVolumes(right);
        turnOver(ofDissolved, ofHeat);
        solve(ofDissolved, ofHeat, shift, right);
    }

    /** Solves with the turnovers taken at the start of the step. */
    void damp(double shift, double[] change) {
        ofWater.shiftBy(shift);
        ofWater.solve(change, water);
        solve(frozenDissolved, frozenHeat, shift, change);
    }

    private void solve(SmallMatrix dissolvedMatrix, SmallMatrix heatMatrix, double shift, double[] right) {
        dissolvedMatrix.shiftBy(shift);
        heatMatrix.shiftBy(shift);
        dissolvedMatrix.solveAll(right, dissolved);
        heatMatrix.solve(right, heat);
    }
}
