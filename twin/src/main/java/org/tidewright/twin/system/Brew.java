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

    /**
     * A brew.
     *
     * @param perVolume amounts per volume in each stock's unit; heat in J above 0 °C, water itself left out
     */
    public Brew(@Unit("*") Map<Stock, Double> perVolume) {
        this.perVolume = new EnumMap<>(perVolume);
        this.perVolume.put(Stock.WATER, 1.0);
    }

    /** Pours a volume, or a flow, out of the world outside. */
    public void pour(Transfers out, Body from, Body to, @Unit("m^3") double volume) {
        perVolume.forEach((stock, amount) -> out.move(stock, from, to, volume * amount));
    }

    /** Amount per volume of a stock. */
    public @Unit("*") double of(Stock stock) {
        return perVolume.getOrDefault(stock, 0.0);
    }
}
