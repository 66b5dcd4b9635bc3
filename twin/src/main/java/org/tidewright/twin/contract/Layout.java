package org.tidewright.twin.contract;

import java.util.Arrays;
import java.util.List;

/**
 * Which stocks the waters of a network hold.
 *
 * @param stocks in the order of their places
 */
public record Layout(List<Stock> stocks) {
    /** Water, salt, heat and oxygen: levels, temperatures and breath. */
    public static final Layout OF_WATER_AND_HEAT =
            new Layout(List.of(Stock.WATER, Stock.SALT, Stock.HEAT, Stock.OXYGEN));

    /** Everything. */
    public static final Layout OF_ALL = new Layout(Arrays.asList(Stock.values()));

    public Layout {
        stocks = List.copyOf(stocks);
    }
}
