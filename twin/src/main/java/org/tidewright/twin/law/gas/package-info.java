/**
 * The laws of dissolved oxygen: exchange through the surface, bubbles, and what the animals use.
 *
 * <p>May use {@code seawater} and nothing of the twin; mechanisms call the laws. Concentrations are mol/m^3, rates
 * mol/s; uptake and transfer are positive numbers, their direction is in the name. To add a consumer, give it a law by
 * what it scales with (mass, area) and its source, and let {@link org.tidewright.twin.law.gas.Q10} carry it to other
 * temperatures.
 */
@NullMarked
package org.tidewright.twin.law.gas;

import org.jspecify.annotations.NullMarked;
