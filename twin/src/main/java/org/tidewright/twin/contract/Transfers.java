package org.tidewright.twin.contract;

import org.tidewright.seawater.unit.Unit;

/**
 * What a mechanism may do: move something from one body to another, or let a reaction go. Negative rates go back.
 *
 * <p>An event moves amounts at once by the same calls, see {@link Watch.Switchboard#atOnce}: what is said here of a rate
 * then holds of an amount.
 */
public interface Transfers {
    /** Moves water; what is dissolved in it and its heat go along as they are in the body the water leaves. */
    void water(Body from, Body to, @Unit("m^3/s") double rate);

    /** Evaporates pure water, which takes its own heat and the given latent heat along and leaves what is dissolved. */
    void vapour(Body from, Body to, @Unit("kg/s") double rate, @Unit("J/kg") double latentHeat);

    /** Moves heat. */
    void heat(Body from, Body to, @Unit("W") double rate);

    /** Moves something by itself, an ion with its counter-ion; not water. */
    void move(Stock stock, Body from, Body to, @Unit("*") double rate);

    /** Lets a reaction go so many times a second. */
    void run(Recipe recipe, @Unit("1/s") double rate);
}
