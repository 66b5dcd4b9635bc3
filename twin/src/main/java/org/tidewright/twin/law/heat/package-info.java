/**
 * The laws by which a tank gains and loses heat, each a pure function of numbers: walls, surface, lid, heater and
 * thermostat, ice, the room around it.
 *
 * <p>May use {@code seawater} and nothing of the twin; mechanisms call the laws, never the other way round. Heat flows
 * are positive out of the water. Areas are left to the caller wherever a flow is proportional to one. To add a law,
 * give it a class named for the thing, its source in the comment, and a row in {@code reference/heat/} that someone
 * else worked out.
 */
@NullMarked
package org.tidewright.twin.law.heat;

import org.jspecify.annotations.NullMarked;
