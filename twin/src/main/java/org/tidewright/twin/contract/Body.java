package org.tidewright.twin.contract;

import java.util.Arrays;
import java.util.List;
import org.tidewright.seawater.unit.Unit;

/**
 * A place that holds water, heat, living or dead matter: a vessel, a pipe, the floor, the room, the air, the fish. The
 * outside world is made of bodies too, so that whatever leaves a tank arrives somewhere.
 */
public final class Body {
    /** So that a stock which is not held cannot be read or written by mistake. */
    private static final int NOT_HELD = -1;

    private final String name;
    private final int index;
    private final Stock[] held;
    private final List<Stock> listed;
    private final Stock[] dissolved;
    private final int[] places = new int[Stock.COUNT];
    private final Shape shape;
    private final double bottomHeight;
    private final double solidHeatCapacity;
    private final boolean outside;

    /**
     * A body.
     *
     * @param index among the network's bodies
     * @param held the stocks it holds
     * @param firstPlace of the first of them in the state; the others follow
     * @param bottomHeight of its inside bottom above the finished floor
     * @param solidHeatCapacity of what is not water in it
     * @param outside whether it belongs to the world around
     */
    public Body(
            String name,
            int index,
            List<Stock> held,
            int firstPlace,
            Shape shape,
            @Unit("m") double bottomHeight,
            @Unit("J/K") double solidHeatCapacity,
            boolean outside) {
        this.name = name;
        this.index = index;
        this.held = held.toArray(Stock[]::new);
        listed = List.copyOf(held);
        dissolved = held.stream().filter(Stock::isDissolved).toArray(Stock[]::new);
        Arrays.fill(places, NOT_HELD);
        for (int i = 0; i < this.held.length; i++) {
            places[this.held[i].number()] = firstPlace + i;
        }
        this.shape = shape;
        this.bottomHeight = bottomHeight;
        this.solidHeatCapacity = solidHeatCapacity;
        this.outside = outside;
    }

    public String name() {
        return name;
    }

    /** Position among the network's bodies. */
    public int index() {
        return index;
    }

    public Shape shape() {
        return shape;
    }

    /** Height of its inside bottom above the finished floor. */
    public @Unit("m") double bottomHeight() {
        return bottomHeight;
    }

    /** Heat capacity of what is not water in it: rock, sand, half the glass; or of a room's fabric. */
    public @Unit("J/K") double solidHeatCapacity() {
        return solidHeatCapacity;
    }

    /** Whether it belongs to the world around: it gives and takes, and no mechanism asks how much it holds. */
    public boolean isOutside() {
        return outside;
    }

    public boolean holds(Stock stock) {
        return places[stock.number()] != NOT_HELD;
    }

    /** The stocks it holds. */
    public List<Stock> held() {
        return listed;
    }

    /** Position of one of its stocks in the state; -1 where it does not hold that stock. */
    public int at(Stock stock) {
        return places[stock.number()];
    }

    /** Number of its stocks that go along with its water. */
    public int dissolvedCount() {
        return dissolved.length;
    }

    /** One of its stocks that go along with its water. */
    public Stock dissolved(int number) {
        return dissolved[number];
    }

    @Override
    public String toString() {
        return name;
    }
}
