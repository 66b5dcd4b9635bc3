package org.tidewright.husbandry.reef;

import org.tidewright.seawater.unit.Unit;
import org.tidewright.twin.law.carbonate.Calcification;

/** What skeletons take out of the water. */
public record Demand(
        @Unit("mol/s") double alkalinity,
        @Unit("mol/s") double calcium,
        @Unit("mol/s") double magnesium) {
    static final Demand NONE = new Demand(0, 0, 0);

    /** Of carbonate laid down: two of alkalinity each, and calcium but for magnesium's share. */
    static Demand of(@Unit("mol/s") double carbonate, @Unit("1") double magnesiumShare) {
        return new Demand(
                2 * carbonate, Calcification.calciumShare(magnesiumShare) * carbonate, magnesiumShare * carbonate);
    }

    Demand plus(Demand other) {
        return new Demand(alkalinity + other.alkalinity, calcium + other.calcium, magnesium + other.magnesium);
    }

    Demand times(@Unit("1") double factor) {
        return new Demand(factor * alkalinity, factor * calcium, factor * magnesium);
    }

    Demand less(Demand other) {
        return plus(other.times(-1));
    }
}
