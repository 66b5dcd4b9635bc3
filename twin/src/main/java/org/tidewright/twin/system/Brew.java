package org.tidewright.twin.system;

import java.util.EnumMap;
import java.util.Map;
import org.tidewright.seawater.unit.Unit;
import org.tidewright.twin.contract.Body;
import org.tidewright.twin.contract.Stock;
import org.tidewright.twin.contract.Transfers;

/** Water mixed by the keeper, or a solution in a bottle: what a cubic metre of it holds. */
public final class Brew {
    private final Map<Stock, Double> perVolume;
    private final Stock[] stocks;
    private final double[] amounts;

    /**
     * A brew.
     *
     * @param perVolume amounts per volume in each stock's unit; heat in J above 0 °C, water itself left out
     */
    public Brew(@Unit("*") Map<Stock, Double> perVolume) {
        this.perVolume = new EnumMap<>(Stock.class);
        this.perVolume.putAll(perVolume);
        this.perVolume.put(Stock.WATER, 1.0);
        stocks = this.perVolume.keySet().toArray(Stock[]::new);
        amounts = this.perVolume.values().stream().mapToDouble(amount -> amount).toArray();
    }

    /** Pours a volume, or a flow, out of the world outside. */
    public void pour(Transfers out, Body from, Body to, @Unit("m^3") double volume) {
        for (int i = 0; i < stocks.length; i++) {
            out.move(stocks[i], from, to, volume * amounts[i]);
        }
    }

    /** Amount per volume of a stock. */
    public @Unit("*") double of(Stock stock) {
        return perVolume.getOrDefault(stock, 0.0);
    }
}
