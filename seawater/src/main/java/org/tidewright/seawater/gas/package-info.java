/**
 * Gases dissolved in seawater: how much it holds at equilibrium with air, and how fast they diffuse.
 *
 * <p>May use {@code unit}, {@code range}, {@code density} and {@code heat}. Amounts are moles in SI units; the forms
 * the trade reads (mg/L, umol/kg) are separate functions. To add a gas, give it a solubility class of its own and a
 * line in {@link org.tidewright.seawater.gas.SchmidtNumber} and {@link org.tidewright.seawater.gas.MolarMass}.
 */
@NullMarked
package org.tidewright.seawater.gas;

import org.jspecify.annotations.NullMarked;
