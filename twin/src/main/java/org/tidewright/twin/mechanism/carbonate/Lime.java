package org.tidewright.twin.mechanism.carbonate;

import org.tidewright.seawater.unit.Unit;
import org.tidewright.twin.contract.Body;
import org.tidewright.twin.contract.Recipe;
import org.tidewright.twin.contract.Stock;

/** The recipe of all lime: calcium, some magnesium in its place, one carbonate. */
final class Lime {
    private Lime() {}

    /**
     * Lime that goes from one body to another.
     *
     * @param magnesium its share of the metal
     */
    static Recipe from(String name, Body from, Body to, @Unit("1") double magnesium) {
        return Recipe.named(name)
                .moves(Stock.CALCIUM, from, to, 1 - magnesium)
                .moves(Stock.MAGNESIUM, from, to, magnesium)
                .moves(Stock.INORGANIC_CARBON, from, to, 1)
                .build();
    }
}
