package org.tidewright.twin.contract;

import java.util.Arrays;
import java.util.Collection;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;

/** Which stocks the bodies of a network hold, and where in its state each stands. */
public final class Layout {
    /** Water, salt, heat and oxygen: levels, temperatures and breath. */
    public static final Layout OF_WATER_AND_HEAT = new Layout(EnumSet.range(Stock.WATER, Stock.OXYGEN));

    /** Everything. */
    public static final Layout OF_ALL = new Layout(EnumSet.allOf(Stock.class));

    /** So low that no body's offset lifts it into the state: a stock that is not held cannot be written by mistake. */
    private static final int NOT_HELD = Integer.MIN_VALUE / 2;

    private final List<Stock> stocks;
    private final int[] slots = new int[Stock.COUNT];

    public Layout(Collection<Stock> held) {
        Set<Stock> ordered = EnumSet.copyOf(held);
        stocks = List.copyOf(ordered);
        Arrays.fill(slots, NOT_HELD);
        for (int i = 0; i < stocks.size(); i++) {
            slots[stocks.get(i).number()] = i;
        }
    }

    /** The stocks held, in the order of their places. */
    public List<Stock> stocks() {
        return stocks;
    }

    /** Number of stocks a body holds. */
    public int count() {
        return stocks.size();
    }

    public boolean holds(Stock stock) {
        return slots[stock.number()] >= 0;
    }

    /** Position of a stock among a body's; far below zero where it is not held. */
    int slot(Stock stock) {
        return slots[stock.number()];
    }
}
