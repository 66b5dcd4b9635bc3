package org.tidewright.twin.contract;

import org.tidewright.seawater.unit.Unit;

/** What a mechanism may do: move something from one body to another. Negative rates move it back. */
public interface Transfers {
    /** Moves water; salt, oxygen and heat go along as they are in the body the water leaves. */
    void water(Body from, Body to, @Unit("m^3/s") double rate);

    /** Evaporates pure water, which takes its own heat and the given latent heat along and leaves salt and oxygen. */
    void vapour(Body from, Body to, @Unit("kg/s") double rate, @Unit("J/kg") double latentHeat);

    /** Moves heat. */
    void heat(Body from, Body to, @Unit("W") double rate);

    /** Moves dissolved oxygen. */
    void oxygen(Body from, Body to, @Unit("mol/s") double rate);
}
