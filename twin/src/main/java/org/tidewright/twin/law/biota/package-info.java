/**
 * The laws of animals and algae: what becomes of a meal, how fishes and seaweeds grow, what the dead give back.
 *
 * <p>May use {@code seawater} and the laws of gas and nutrients, and nothing else of the twin; mechanisms call the
 * laws. Fishes are counted by live mass, seaweeds by dry mass, what they take and give by moles of nitrogen, phosphorus
 * and carbon. To add an animal, say what share of each element it keeps, breathes out and drops, and let a test see
 * that the shares add up to one.
 */
@NullMarked
package org.tidewright.twin.law.biota;

import org.jspecify.annotations.NullMarked;
