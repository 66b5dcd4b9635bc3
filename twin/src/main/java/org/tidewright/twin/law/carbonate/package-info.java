/**
 * The laws of carbon and calcium: carbon dioxide between room, air and water, and what dissolves or lays down calcium
 * carbonate.
 *
 * <p>May use {@code seawater} and the laws of {@code gas}; mechanisms call the laws. Concentrations are mol/m^3,
 * alkalinity among them as moles of charge; rates are moles of calcium carbonate, which take or give two of alkalinity
 * each. Nothing here solves the carbonate system of the water: pH, saturation and dissolved CO2 come in as arguments.
 * To add a source or a sink, give it a law by what it scales with (area, mass, flow), its source, and constants low,
 * usual, high where an ensemble must vary it.
 */
@NullMarked
package org.tidewright.twin.law.carbonate;

import org.jspecify.annotations.NullMarked;
