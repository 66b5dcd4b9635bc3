package org.tidewright.twin.contract;

import org.tidewright.seawater.unit.Unit;

/**
 * A place that holds water, heat or oxygen: a vessel, a pipe, the floor, the room, the air. The outside world is made of
 * bodies too, so that whatever leaves a tank arrives somewhere.
 */
public final class Body {
    private final String name;
    private final int index;
    private final Shape shape;
    private final double bottomHeight;
    private final double solidHeatCapacity;

    public Body(
            String name,
            int index,
            Shape shape,
            @Unit("m") double bottomHeight,
            @Unit("J/K") double solidHeatCapacity) {
        this.name = name;
        this.index = index;
        this.shape = shape;
        this.bottomHeight = bottomHeight;
        this.solidHeatCapacity = solidHeatCapacity;
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

    /** Position of one of its stocks in the state. */
    public int at(Stock stock) {
        return index * Stock.COUNT + stock.slot();
    }

    @Override
    public String toString() {
        return name;
    }
}
