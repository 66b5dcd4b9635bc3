/**
 * The laws of nitrogen, phosphorus and organic matter in the water: what bacteria, media and free algae do with them.
 *
 * <p>May use {@code seawater} and the laws of gas, and nothing else of the twin; mechanisms call the laws.
 * Concentrations are mol/m^3 of the element or of oxygen, rates mol/s, cells are counted by the nitrogen or carbon in
 * them. A small negative concentration, as a solver's trial step may bring, counts as none. What an ensemble may vary
 * is an argument, and its {@link org.tidewright.twin.law.nutrient.Spread} stands beside the law. To add a sink or a
 * source, write its rate and its stoichiometry in one class, and let a test close the balance of every element it
 * moves.
 */
@NullMarked
package org.tidewright.twin.law.nutrient;

import org.jspecify.annotations.NullMarked;
