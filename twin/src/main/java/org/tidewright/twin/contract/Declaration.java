package org.tidewright.twin.contract;

import org.tidewright.plan.source.Basis;
import org.tidewright.seawater.unit.Unit;

/** Where a network's bodies, parameters and settings are declared while it is assembled. Names are unique. */
public interface Declaration {
    Body body(String name, Shape shape, @Unit("m") double bottomHeight, @Unit("J/K") double solidHeatCapacity);

    /**
     * A body of the world around, which only keeps count of what it gave and took: the tap, the drain, the weather. No
     * mechanism may ask how much it holds.
     */
    Body outside(String name);

    /** A store of a few stocks: living things, what lies on the ground, a medium, the air of a room. */
    Body pool(String name, Stock... holds);

    /** A body without a surface. */
    default Body body(String name) {
        return body(name, Shape.none(), 0, 0);
    }

    /**
     * A number not known exactly.
     *
     * @param unit coherent unit of the three values
     * @param low 5 of 100 draws lie below
     * @param high 95 of 100 draws lie below
     */
    Parameter parameter(
            String name,
            String unit,
            @Unit("*") double usual,
            @Unit("*") double low,
            @Unit("*") double high,
            Basis basis,
            String source);

    /** A number that follows from parameters, to be worked out once a run. */
    Drawn derived(Drawn number);

    Setting setting(String name, @Unit("*") double initial);
}
