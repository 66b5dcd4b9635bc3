package org.tidewright.twin.contract;

import org.tidewright.seawater.unit.Unit;

/** What follows from a body's stocks about the chemistry of its water. Found once a moment, when first asked for. */
public interface Solution {
    /** pH on the total scale. */
    @Unit("1")
    double ph();

    /** Dissolved carbon dioxide. */
    @Unit("mol/m^3")
    double carbonDioxide();

    /** Dissolved carbon dioxide were it at rest with air of this partial pressure. */
    @Unit("mol/m^3")
    double carbonDioxideUnder(@Unit("atm") double partialPressure);

    /** Partial pressure of carbon dioxide. */
    @Unit("atm")
    double partialPressure();

    /** Saturation state of aragonite. */
    @Unit("1")
    double aragoniteSaturation();

    /** Share of all ammonia that is not ionised. */
    @Unit("1")
    double freeAmmoniaShare();

    /** Dissolved oxygen were it at rest with air at one atmosphere. */
    @Unit("mol/m^3")
    double oxygenAtRest();
}
