/**
 * The carbon dioxide system of seawater at one atmosphere, with the other weak acids that share its alkalinity. Each
 * acid has a file with its dissociation constants; {@link org.tidewright.seawater.carbonate.CarbonateSystem} takes any
 * two of alkalinity, inorganic carbon, pH, carbon dioxide and carbonate and gives the whole
 * {@link org.tidewright.seawater.carbonate.CarbonateState}; {@link org.tidewright.seawater.carbonate.CarbonateBatch}
 * does so for columns.
 *
 * <p>Amounts are mol per kilogram of seawater, pressures atm, constants on the total pH scale unless their name says
 * otherwise. May use {@code unit}, {@code range}, {@code gas}. To add a set of constants for carbonic acid, give
 * {@code CarbonicAcid} a constant; to add an acid, write its law, let {@code Equilibria} hold its constant and
 * {@code AlkalinityBalance} its share.
 */
@NullMarked
package org.tidewright.seawater.carbonate;

import org.jspecify.annotations.NullMarked;
