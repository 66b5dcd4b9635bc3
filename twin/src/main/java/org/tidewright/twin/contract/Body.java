package org.tidewright.twin.contract;

import java.util.Set;
import org.tidewright.seawater.unit.Unit;

/**
 * A place that holds water, heat or oxygen: a vessel, a pipe, the floor, the room, the air. The outside world is made of
 * bodies too, so that whatever leaves a tank arrives somewhere.
 */
public final class Body {
    private final String name;
    private final int index;
    private final int offset;
    private final Layout layout;
    private final Shape shape;
    private final double bottomHeight;
    private final double solidHeatCapacity;
    private final boolean outside;
    private final Set<Stock> judged;

    public Body(
            String name,
            int index,
            Layout layout,
            Shape shape,
            @Unit("m") double bottomHeight,
            @Unit("J/K") double solidHeatCapacity,
            boolean outside,
            Set<Stock> judged) {
        this.name = name;
        this.index = index;
        this.offset = index * layout.count();
        this.layout = layout;
        this.shape = shape;
        this.bottomHeight = bottomHeight;
        this.solidHeatCapacity = solidHeatCapacity;
        this.outside = outside;
        this.judged = judged;
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

    /** Whether a run's steps are judged by how exactly they follow this stock of it. */
    public boolean isJudged(Stock stock) {
        return judged.contains(stock);
    }

    /** Position of one of its stocks in the state; negative where the network does not hold that stock. */
    public int at(Stock stock) {
        return offset + layout.slot(stock);
    }

    /** Position of its first stock in the state; the others follow in the order of the layout. */
    public int offset() {
        return offset;
    }

    @Override
    public String toString() {
        return name;
    }
}
